// Keeps this page and its files on the phone where the connection is secure; over plain HTTP a browser keeps none.
export async function keepPage() {
  if (!('serviceWorker' in navigator)) return;
  try {
    await navigator.serviceWorker.register('/sw.js');
    const registration = await navigator.serviceWorker.ready;
    const files = performance.getEntriesByType('resource').map((entry) => entry.name)
      .filter((name) => new URL(name).origin === location.origin);
    registration.active.postMessage({ keep: { page: location.origin + location.pathname, files } });
  } catch {
    // Without it the page works as long as it stays open.
  }
}
