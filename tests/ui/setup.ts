import '@testing-library/jest-dom/vitest';

/** There is no server behind these tests: what asks for a file is told so at once, as a page without a network is. */
globalThis.fetch = () => Promise.reject(new TypeError('Failed to fetch'));
