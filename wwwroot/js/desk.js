// Keeps a desk's page as it is on the server: a mark comes whenever something changed, and the page is read again. What was
// missed while offline is read with the first mark that comes after it. While no marks come, the page is read every few seconds.
const region = document.querySelector('[data-live]')
const state = document.querySelector('[data-live-state]')
const asOf = document.querySelector('[data-as-of]')
const typed = document.querySelector('form[data-keep]')
const patience = 40_000
const pause = 10_000
// Of a form: what can be promised depends on it.
const form = region?.closest('form')
const asked = ['Sport', 'Day', 'NeededAt', 'NotBeforeAt', 'KeptFor', 'Minutes']

let mark = region?.dataset.mark
let line
let heard = Date.now()
let live = true
let minute = new Date().getMinutes()
let reading = false
let again = false
let over = false

const clock = time => new Date(time).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' })

const old = () => `× Not live since ${clock(heard)}. What you see may be old.`

function tell(isLive) {
  if (over || isLive === live) return
  live = isLive
  state.hidden = live
  if (!live) state.textContent = old()
}

// Neither a mark nor the page.
function missed() {
  tell(false)
  if (!over) state.textContent = old()
}

// The page itself could be read, though no marks come.
function tellRead() {
  if (!over && !live) state.textContent = `× Not live since ${clock(heard)}. Read again at ${clock(Date.now())}, and every ${pause / 1000} seconds.`
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
    // Between here and there something says that the program does not answer.
    if (answer.status >= 500) {
      missed()
      return
    }
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
    tellRead()
  } catch {
    missed()
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
    if (over || (live && Date.now() - heard < patience)) return
    tell(false)
    connect()
    read()
  }, pause)
}
