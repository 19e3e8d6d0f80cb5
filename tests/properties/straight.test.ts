import { ANY_KIND } from '../helpers/anyMade'
import { itKeepsAllLaws } from '../helpers/keepsLaws'

itKeepsAllLaws(ANY_KIND[0])
