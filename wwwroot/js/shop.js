// Conveniences in the shop area; every page works without them.

// Ignores a second click while the first is being handled; the server is idempotent anyway.
document.addEventListener('submit', event => {
  const form = event.target
  if (form.dataset.sent) {
    event.preventDefault()
    return
  }
  if (form.method === 'post') form.dataset.sent = 'yes'
})

// Coming back with the Back button opens the form again.
window.addEventListener('pageshow', () => {
  for (const form of document.forms) delete form.dataset.sent
})

// "/" puts the cursor into the search box.
document.addEventListener('keydown', event => {
  const typing = event.target.closest('input, textarea, select')
  if (document.body.dataset.keys === 'off' || event.key !== '/' || typing || event.ctrlKey || event.metaKey || event.altKey) return
  event.preventDefault()
  document.querySelector('[data-find]')?.focus()
})

// What is wrong with a form is read out first.
document.querySelector('.errors')?.focus()

// Copy buttons appear where copying works; otherwise the text beside them can be copied by hand.
for (const button of document.querySelectorAll('[data-copy]')) {
  if (!navigator.clipboard) break
  button.hidden = false
  const words = button.textContent
  button.addEventListener('click', async () => {
    await navigator.clipboard.writeText(document.getElementById(button.dataset.copy).value)
    button.textContent = 'Copied'
    setTimeout(() => { button.textContent = words }, 2000)
  })
}
