export function portFrom(
  text: string | undefined,
): { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string }
