// Passkeys: the browser's own window asks for a finger, a face or a PIN. Forms that need it are hidden where it is not there.

const there = Boolean(window.PublicKeyCredential?.parseRequestOptionsFromJSON)

const asks = {
  get: options => navigator.credentials.get({ publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(options) }),
  create: options => navigator.credentials.create({ publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(options) }),
}

// What the server wants to know first, with the password where the form has one.
async function options(form) {
  const answer = await fetch(new URL('?handler=options', location.href), { method: 'POST', body: new FormData(form) })
  if (!answer.ok) throw new Error(answer.status === 400 ? await answer.text() : 'Wait a little, then try again.')
  return answer.json()
}

function tell(form, words) {
  const fault = form.querySelector('[data-fault]')
  fault.textContent = words
  fault.hidden = false
  delete form.dataset.sent
}

for (const form of document.querySelectorAll('[data-passkey]')) {
  if (!there) break
  form.hidden = false
  form.addEventListener('submit', async event => {
    event.preventDefault()
    try {
      const credential = await asks[form.dataset.passkey](await options(form))
      form.elements.credential.value = JSON.stringify(credential)
      form.submit()
    } catch (fault) {
      tell(form, fault instanceof DOMException ? 'Nothing was done: the window was closed, or this device has no passkey for this address.' : fault.message)
    }
  })
}
