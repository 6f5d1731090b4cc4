import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { designs } from '../../store/keeping/use-designs.ts';
import { App } from './app.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { keepPage } from './offline/keep-page.ts';
import './theme.css';

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no element with the id "root".');
if (import.meta.env.PROD) {
  void keepPage(navigator.serviceWorker, {
    beforeNew: () => designs.getState().flush(),
    reopen: () => location.reload(),
  });
}

createRoot(root).render(
  <StrictMode>
    <ErrorBoundary>
      <App />
    </ErrorBoundary>
  </StrictMode>,
);
