// A date field shows a day as the browser has it, which can be month first. The same day stands beside it in words.
const words = new Intl.DateTimeFormat(document.documentElement.lang === 'en' ? 'en-GB' : document.documentElement.lang, {
  day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC'
})

for (const field of document.querySelectorAll('input[type=date]')) {
  const said = document.createElement('span')
  said.className = 'unit'
  field.after(said)
  const say = () => {
    said.hidden = !field.valueAsDate
    said.textContent = field.valueAsDate ? words.format(field.valueAsDate) : ''
  }
  field.addEventListener('input', say)
  say()
}
