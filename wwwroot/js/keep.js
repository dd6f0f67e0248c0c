// What was typed at a desk outlives a lost connection. The form is sent beside the page first, and the page is left only once
// the desk has answered. Its key makes sure that what is sent twice is taken in once.
const patience = 10_000

for (const form of document.querySelectorAll('form[data-keep]')) {
  const told = form.querySelector('[data-unsent]')
  let sending = false
  let arrived = false

  const say = words => {
    told.textContent = `× ${words}`
    told.hidden = false
  }

  form.addEventListener('submit', async event => {
    if (arrived) return
    event.preventDefault()
    event.stopPropagation()
    if (sending) return
    sending = true
    told.hidden = true
    const { submitter } = event
    const press = submitter?.textContent.trim() ?? ''
    try {
      const sent = new URLSearchParams(new FormData(form))
      if (submitter?.name) sent.append(submitter.name, submitter.value)
      const answer = await fetch(form.action, { method: 'POST', body: sent, redirect: 'manual', cache: 'no-store', signal: AbortSignal.timeout(patience) })
      arrived = answer.ok || answer.type === 'opaqueredirect'
      if (arrived) form.requestSubmit(submitter)
      else say(`The desk answered with error ${answer.status}. What you typed is still here; note it before you load the page again.`)
    } catch {
      say(`The desk did not answer. What you typed is still here. Press “${press}” again once the connection is back; it counts once.`)
    } finally {
      sending = false
    }
  })

  // Coming back with the Back button opens the form again.
  window.addEventListener('pageshow', () => { arrived = false })
}
