// Lies beside the page on a server and keeps it for use without a network. The page asks for it only when one presses the button.
const page = new URL(new URL(self.location.href).searchParams.get('page') ?? 'hearthfall.html', self.location.href)
const shelf = 'hearthfall'

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(shelf).then((kept) => kept.add(page.href)))
  self.skipWaiting()
})

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))

self.addEventListener('fetch', (event) => {
  const asked = new URL(event.request.url)
  if (event.request.mode !== 'navigate' || asked.pathname !== page.pathname) return
  event.respondWith(
    fetch(event.request)
      .then(async (found) => {
        if (found.ok) await (await caches.open(shelf)).put(page.href, found.clone())
        return found
      })
      .catch(async () => (await (await caches.open(shelf)).match(page.href)) ?? Response.error()),
  )
})
