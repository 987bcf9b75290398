import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';
import harbour from './harbour.json';
import { Week } from './Week.js';

function Page() {
  const [method, setMethod] = useState<unknown>();
  const [isThere, setIsThere] = useState(true);
  return (
    <>
      <button onClick={() => setMethod(harbour)}>Harbour group</button>
      <button onClick={() => setIsThere(!isThere)}>Away or back</button>
      {isThere && <Week method={method} />}
    </>
  );
}

const place = document.body.appendChild(document.createElement('main'));
createRoot(place).render(
  <StrictMode>
    <Page />
  </StrictMode>,
);
