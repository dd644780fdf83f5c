// One finding in a margin column: glyph, sentence, margin, figures, and where the value stands on a scale of -50 to +50 % of the limit.
import {element} from './element.js';

export function findingRow(one, current, on) {
  return element('button', {type: 'button', class: 'noted', 'aria-current': String(current), on},
    element('span', {class: one.marginClass, 'aria-hidden': 'true'}, one.glyph), element('b', {}, one.claim), element('span', {class: 'm'}, one.margin),
    one.letter ? element('span', {class: 'letter'}, one.letter) : element('span'), element('span', {class: 'figures'}, one.figures), bar(one));
}

// Limit in the middle, half a limit to each side, ticks each tenth; what is not known stands nowhere on it.
function bar(one) {
  const cell = element('span', {class: 'barcell bar', 'aria-hidden': 'true'});
  const x = one.bar * 260;
  const ticks = Array.from({length: 11}, (_, i) => `M${i * 26} ${i === 5 ? 0 : 9}V13`).join('');
  cell.innerHTML = `<svg viewBox="0 0 260 14" preserveAspectRatio="none"><path d="M0 13H260${ticks}" fill="none" stroke="#6D7E7A"/>${one.marginClass === 'unknown' ? '' : `<path class="${one.marginClass}" d="M130 6H${x}" stroke="currentColor" stroke-width="4" fill="none"/><path class="index" d="M${x - 4} 1h8l-4 6z" fill="#14211F"/>`}</svg>`;
  return cell;
}
