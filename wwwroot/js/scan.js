// Reads a tag's square with the camera. No picture is kept or sent; what was read is looked for as if it had been typed.

const each = 120
const longest = 60000
const most = 1280

// The browser's own reader where it knows QR codes, else ZXing-C++ as WebAssembly.
async function reader (box) {
  if ('BarcodeDetector' in window && (await window.BarcodeDetector.getSupportedFormats()).includes('qr_code')) {
    const own = new window.BarcodeDetector({ formats: ['qr_code'] })
    return async canvas => (await own.detect(canvas))[0]?.rawValue
  }
  const { prepareZXingModule, readBarcodes } = await import(box.dataset.reader)
  await prepareZXingModule({ overrides: { locateFile: () => box.dataset.wasm }, fireImmediately: true })
  return async canvas => (await readBarcodes(canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height),
    { formats: ['QRCode'], maxNumberOfSymbols: 1 })).find(found => found.isValid)?.text
}

async function look (box, video, read) {
  const canvas = document.createElement('canvas')
  const until = Date.now() + longest
  while (Date.now() < until && video.srcObject?.active) {
    const scale = Math.min(1, most / Math.max(video.videoWidth, video.videoHeight))
    canvas.width = Math.round(video.videoWidth * scale)
    canvas.height = Math.round(video.videoHeight * scale)
    if (canvas.width > 0) {
      canvas.getContext('2d', { willReadFrequently: true }).drawImage(video, 0, 0, canvas.width, canvas.height)
      const text = await read(canvas)
      if (text) return text
    }
    await new Promise(resolve => setTimeout(resolve, each))
  }
  return null
}

async function scan (box) {
  const video = box.querySelector('video')
  const told = box.querySelector('[role=status]')
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment', width: { ideal: most } } })
  try {
    told.textContent = box.dataset.looking
    video.srcObject = stream
    video.hidden = false
    await video.play()
    return await look(box, video, await reader(box))
  } finally {
    for (const track of stream.getTracks()) track.stop()
    video.srcObject = null
    video.hidden = true
  }
}

for (const box of document.querySelectorAll('[data-scan]')) {
  // Browsers grant the camera over https only, and on this machine.
  if (!navigator.mediaDevices?.getUserMedia) break
  box.hidden = false
  const button = box.querySelector('button')
  button.addEventListener('click', async () => {
    button.disabled = true
    try {
      const text = await scan(box)
      box.querySelector('[role=status]').textContent = text ?? box.dataset.nothing
      if (text) {
        const form = box.closest('form')
        form.elements.q.value = text
        form.submit()
      }
    } catch {
      box.querySelector('[role=status]').textContent = box.dataset.denied
    }
    button.disabled = false
  })
}
