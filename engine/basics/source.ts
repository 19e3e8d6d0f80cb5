/** What the trade does without anyone having published it. */
export const PRACTICE = 'common practice, no source'

/** What follows from sizes and places alone. */
export const GEOMETRY = 'worked out from the boards'

/** What a maker has chosen for all cabinets that are built so. */
export const METHOD = 'the build method'

export const MATERIALS = 'the list of materials'

/** What was typed from its maker's drawing. */
export const APPLIANCE = 'the size typed for the appliance, from its maker'
