import { createRoot } from 'react-dom/client'
import { App } from './App'
import { keepForOffline } from './files/offline'
import { listenToPageKeys } from './stages/pageKeys'
import { connectCutting } from './store/cutting'
import { startKeeping } from './store/keeping'
import { connectPacker } from './store/layouts'
import './ui/tokens.css'
import { chosenTheme, showTheme } from './ui/theme'
import { hirePacker } from './workers/hire'

keepForOffline()
showTheme(chosenTheme())
listenToPageKeys()
await startKeeping()
connectPacker(hirePacker)
connectCutting()
createRoot(document.getElementById('root')!).render(<App />)
