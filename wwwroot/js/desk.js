// Keeps a desk's page as it is on the server: a mark comes whenever something changed, and the page is read again. What was
// missed while offline is read with the first mark that comes after it.
const region = document.querySelector('[data-live]')
const state = document.querySelector('[data-live-state]')
const asOf = document.querySelector('[data-as-of]')
const typed = document.querySelector('form[data-keep]')
const patience = 40_000
// Of a form: what can be promised depends on it.
const form = region?.closest('form')
const asked = ['Sport', 'Day', 'NeededAt', 'NotBeforeAt', 'KeptFor', 'Minutes']

let mark = region?.dataset.mark
let line
let heard = Date.now()
let minute = new Date().getMinutes()
let reading = false
let again = false
let over = false

function tell(live) {
  if (over || live === state.hidden) return
  state.hidden = live
  state.textContent = live ? '' : `× Not live since ${new Date(heard).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' })}. What you see may be old.`
}

// The event ended, this device was signed out, or what the page is about is elsewhere: the page says so, unless something is
// typed there.
function end() {
  if (!typed) {
    location.reload()
    return
  }
  over = true
  line.close()
  state.hidden = false
  state.textContent = '× This page is no longer up to date: the racket has moved on, or this device is signed out. What you typed is still here.'
}

const fieldOf = name => name.split('.').pop()

// As it is now and for what is typed by now, not as a form was refused.
function address() {
  const here = new URL(location.href)
  here.searchParams.delete('again')
  for (const [name, value] of form ? new FormData(form) : []) {
    if (asked.includes(fieldOf(name))) here.searchParams.set(`typed.${fieldOf(name)}`, value)
  }
  return here
}

async function read() {
  again = reading
  if (reading || over) return
  reading = true
  try {
    // What was done is said to whoever comes to the page, and is not used up by reading it again.
    const answer = await fetch(address(), { cache: 'no-store', headers: { 'X-Live': 'read' } })
    if (!answer.ok || answer.redirected) {
      end()
      return
    }
    const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('[data-live]')
    if (!fresh) return
    const focused = document.activeElement?.id
    region.replaceChildren(...fresh.childNodes)
    if (focused) document.getElementById(focused)?.focus()
    mark = fresh.dataset.mark
    minute = new Date().getMinutes()
  } catch {
    tell(false)
  } finally {
    reading = false
    if (again) read()
  }
}

function hear() {
  heard = Date.now()
  if (asOf) asOf.hidden = true
  tell(true)
}

function connect() {
  if (over) return
  line?.close()
  line = new EventSource(region.dataset.live)
  line.addEventListener('desk', event => {
    hear()
    if (event.data !== mark) read()
  })
  // Times go on by themselves.
  line.addEventListener('beat', () => {
    hear()
    if (new Date().getMinutes() !== minute) read()
  })
  line.addEventListener('error', () => tell(false))
}

if (region && state) {
  connect()
  form?.addEventListener('change', event => { if (asked.includes(fieldOf(event.target.name))) read() })
  window.addEventListener('online', connect)
  window.addEventListener('offline', () => tell(false))
  setInterval(() => {
    if (over || Date.now() - heard < patience) return
    tell(false)
    connect()
  }, 10_000)
}
