import { createRoot } from 'react-dom/client';
import './look/base.css';
import { App } from './App';
import { connectHost } from './host/host-client';
import { beginWindow } from './state/begin-window';

const place = document.getElementById('window');
if (place === null) throw new Error('the page has no place for the window');
const root = createRoot(place);
beginWindow(connectHost()).then(
  (begun) => root.render(<App {...begun} />),
  (fault: unknown) => {
    place.setAttribute('role', 'alert');
    place.textContent = `Ledgewright cannot start: ${fault instanceof Error ? fault.message : String(fault)} Start it again from its own command; the address with its token serves one run only.`;
  },
);
