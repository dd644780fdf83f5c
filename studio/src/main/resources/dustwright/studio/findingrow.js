// One finding in a margin column: glyph, sentence, margin, figures, and where the value stands on a scale of -50 to +50 % of the limit.
import {element} from './element.js';

export function findingRow(one, current, on) {
  return element('button', {type: 'button', class: 'noted', 'aria-current': String(current), on},
    element('span', {class: one.marginClass, 'aria-hidden': 'true'}, one.glyph), element('b', {}, one.claim), element('span', {class: 'm'}, one.margin),
    one.letter ? element('span', {class: 'letter'}, one.letter) : element('span'), element('span', {class: 'figures'}, one.figures), marginBar(one));
}

// Limit in the middle, half a limit to each side, ticks each tenth; what is not known stands nowhere on it.
export function marginBar(one) {
  const cell = element('span', {class: 'barcell bar', 'aria-hidden': 'true'});
  const known = one.marginClass !== 'unknown';
  const x = one.bar * 260;
  const ticks = Array.from({length: 11}, (_, i) => `M${i * 26} ${i === 5 ? 0 : 9}V13`).join('');
  cell.innerHTML = `<svg viewBox="0 0 260 14" preserveAspectRatio="none"><path d="M0 13H260${ticks}" fill="none" stroke="#6D7E7A" vector-effect="non-scaling-stroke"/>${known ? `<path class="${one.marginClass}" d="M130 6H${x}" stroke="currentColor" stroke-width="4" fill="none"/>` : ''}</svg>${known ? '<svg class="index" viewBox="0 0 8 6"><path d="M0 0h8l-4 6z" fill="#14211F"/></svg>' : ''}`;
  // Of its own, so that it keeps its shape on a bar of any width.
  if (known) cell.querySelector('.index').style.left = `${100 * one.bar}%`;
  return cell;
}
