import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import './theme.css';

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no element with the id "root".');
createRoot(root).render(
  <StrictMode>
    <ErrorBoundary>
      <App />
    </ErrorBoundary>
  </StrictMode>,
);
