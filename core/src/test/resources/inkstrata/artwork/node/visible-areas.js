// Answers each line "WIDTH FILE.svg" with one line of JSON: the share of the picture that each colour covers.
// Pictures are drawn by resvg on white and without smoothing, so that every pixel has a colour of the drawing.
import { readFileSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { Resvg } from '@resvg/resvg-js'

function shares(file, width) {
  const picture = new Resvg(readFileSync(file), {
    background: '#ffffff',
    fitTo: { mode: 'width', value: width },
    shapeRendering: 0,
    font: { loadSystemFonts: false },
  }).render()
  const pixels = new Uint32Array(new Uint8Array(picture.pixels).buffer)
  const counts = new Map()
  for (let start = 0, i = 1; i <= pixels.length; i++) {
    if (i === pixels.length || pixels[i] !== pixels[start]) {
      counts.set(pixels[start], (counts.get(pixels[start]) ?? 0) + i - start)
      start = i
    }
  }
  const colours = {}
  for (const [pixel, count] of counts) {
    const rgb = ((pixel & 0xff) << 16) | (pixel & 0xff00) | ((pixel >> 16) & 0xff)
    colours['#' + rgb.toString(16).padStart(6, '0')] = count / pixels.length
  }
  return colours
}

for await (const line of createInterface({ input: process.stdin })) {
  const space = line.indexOf(' ')
  console.log(JSON.stringify(shares(line.slice(space + 1), Number(line.slice(0, space)))))
}
