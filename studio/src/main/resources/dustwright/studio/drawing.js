// The drawing under the hand: what is pointed at, zoom and pan, the reticle round the chosen piece.
import {letter} from './lettering.js';
import {Touch} from './touch.js';

const SVG = 'http://www.w3.org/2000/svg';
const COS_30 = Math.sqrt(3) / 2;
const CLOSE_px = 40;
// What a drawing has of A4 and of Letter, upright.
const PAPER_px = {width: 690, height: 490};

// The lines of a drawing: its head, and of each layer the name and its pieces, one a line.
function inLayers([head, ...lines]) {
  const layers = [];
  for (const line of lines) {
    const name = /^<g data-layer="([^"]*)">$/.exec(line)?.[1];
    if (name) layers.push({name, pieces: []});
    else if (line !== '</g>' && line !== '</svg>') layers.at(-1).pieces.push(line);
  }
  return {head, layers};
}

function read(markup) {
  const scrap = document.createElement('template');
  scrap.innerHTML = markup;
  return [...scrap.content.children];
}

// A tag that is renewed keeps what stood there until it is written anew.
function written(tag, before) {
  if (!before) return;
  tag.laid = before.laid;
  tag.append(...before.childNodes);
}

export class Drawing {
  constructor(place, chosen) {
    this.place = place;
    this.chosen = chosen;
    this.box = null;
    this.home = null;
    this.hand = null;
    this.under = null;
    this.sheet = null;
    this.lines = [];
    this.number = 0;
    this.marked = {kind: '', id: ''};
    this.cut = null;
    this.touch = new Touch(this);
    place.addEventListener('wheel', event => this.wheel(event), {passive: false});
    place.addEventListener('pointerdown', event => this.down(event));
    place.addEventListener('pointermove', event => this.move(event));
    place.addEventListener('pointerup', event => this.up(event));
    place.addEventListener('pointercancel', event => { this.drag = null; this.touch.gone(event); this.hand?.drop(); });
    new ResizeObserver(() => this.seen()).observe(place);
  }

  get svg() { return this.place.querySelector('svg'); }

  // Another drawing of the same sheet renews only the lines that differ, so that nothing else is told, read, laid out and painted again.
  show(told, sheet, number) {
    const moved = JSON.stringify(sheet) !== JSON.stringify(this.sheet);
    this.sheet = sheet;
    this.lines = told.split('\n').flatMap(line => line.startsWith('=') ? this.before(line) : [line]);
    this.number = number;
    const {head, layers} = inLayers(this.lines);
    const home = /viewBox="([^"]*)"/.exec(head)?.[1];
    if (this.svg && home === this.home && layers.map(layer => layer.name).join() === this.layers) {
      this.title(head);
      this.renew(layers);
      if (moved) this.seen();
      return;
    }
    this.place.replaceChildren(...read(this.lines.join('\n')));
    const svg = this.svg;
    if (!svg) return;
    this.layers = layers.map(layer => layer.name).join();
    const shown = svg.querySelectorAll(':scope > [data-layer]');
    layers.forEach(({pieces}, n) => [...shown[n].children].forEach((piece, at) => this.dress(piece, pieces[at])));
    svg.removeAttribute('width');
    svg.removeAttribute('height');
    svg.setAttribute('role', 'group');
    if (home !== this.home) { this.home = home; this.box = null; }
    this.look(this.box);
  }

  // Lines that stand as in the drawing before: =FROM COUNT.
  before(line) {
    const [from, count] = line.slice(1).split(' ').map(Number);
    return this.lines.slice(from, from + count);
  }

  title(head) {
    const [fresh] = read(`${head}</svg>`);
    this.svg.setAttribute('aria-label', fresh.getAttribute('aria-label'));
    this.svg.querySelector('title').textContent = fresh.querySelector('title').textContent;
  }

  renew(layers) {
    const shown = [...this.svg.querySelectorAll(':scope > [data-layer]')];
    const had = shown.map(layer => Map.groupBy(layer.children, piece => piece.source));
    const next = layers.map(({pieces}, n) => pieces.map(source => had[n].get(source)?.pop() ?? source));
    const unread = next.flat().filter(piece => typeof piece === 'string');
    const made = unread.length ? [...read(`<svg xmlns="${SVG}">${unread.join('')}</svg>`)[0].children] : [];
    next.forEach((pieces, n) => {
      // What is gone goes first, so that what stays is never moved.
      const gone = [...had[n].values()].flat();
      const tags = new Map(gone.map(piece => [piece.dataset.name, piece]));
      for (const piece of gone) piece.remove();
      let at = shown[n].firstElementChild;
      for (const one of pieces) {
        const piece = typeof one === 'string' ? this.dress(made.shift(), one) : one;
        if (piece !== one && piece.dataset.tag) written(piece, tags.get(piece.dataset.name));
        if (piece === at) at = at.nextElementSibling; else shown[n].insertBefore(piece, at);
      }
    });
  }

  // What a piece is on the page besides its lines: where it is caught, and its name.
  dress(piece, source) {
    piece.source = source;
    if (piece.dataset.run) {
      const reach = piece.querySelector('path').cloneNode();
      for (const name of ['stroke', 'stroke-width', 'stroke-dasharray', 'fill']) reach.removeAttribute(name);
      reach.setAttribute('class', 'catch');
      piece.append(reach);
      this.name(piece, `tube ${piece.dataset.run}`);
    }
    if (piece.dataset.inlet) {
      const circle = piece.querySelector('circle');
      const reach = document.createElementNS(SVG, 'circle');
      reach.setAttribute('cx', circle.getAttribute('cx'));
      reach.setAttribute('cy', circle.getAttribute('cy'));
      reach.setAttribute('r', Math.max(9, Number(circle.getAttribute('r')) + 3));
      reach.setAttribute('class', 'catch');
      piece.append(reach);
      const open = circle.getAttribute('fill') !== '#FFFFFF';
      this.name(piece, `inlet ${piece.dataset.inlet}, ${open ? 'open' : 'closed'}`);
    }
    return piece;
  }

  // Where a place of the building lies on the sheet.
  onSheetAt({x, y, z}) {
    const {scale, left, top, tilt, kind} = this.sheet;
    return kind === 'PLAN'
      ? [left + scale * (x + tilt * z), top - scale * (y + tilt * z)]
      : [left + scale * (x - y) * COS_30, top - scale * ((x + y) / 2 + z)];
  }

  name(piece, words) {
    piece.setAttribute('role', 'button');
    piece.setAttribute('aria-label', words);
    piece.setAttribute('tabindex', '-1');
  }

  pieces() { return [...this.place.querySelectorAll('[data-run], [data-inlet]')]; }

  tubes() { return this.pieces().map(piece => piece.dataset.run).filter(Boolean); }

  find(kind, id) { return this.pieces().find(piece => piece.dataset[kind] === id); }

  mark(kind, id) {
    this.marked = {kind: kind ?? '', id: id ?? ''};
    if (this.cut && (kind !== 'run' || id !== this.cut.run)) this.cut = null;
    const piece = this.ring();
    if (piece && piece.getAttribute('tabindex') !== '0') {
      for (const other of this.place.querySelectorAll('[tabindex="0"]')) other.setAttribute('tabindex', '-1');
      piece.setAttribute('tabindex', '0');
    }
    this.relabel(true);
  }

  // Round the chosen piece, as large on the screen at every zoom.
  ring() {
    this.place.querySelector('.reticle')?.remove();
    const {kind, id} = this.marked;
    const piece = kind && this.find(kind, id);
    if (!piece) return null;
    const {x, y} = this.middle(piece);
    const k = this.pixel;
    const r = kind === 'inlet' ? Math.max(13 * k, Number(piece.querySelector('circle').getAttribute('r')) + 6 * k) : 16 * k;
    const ring = document.createElementNS(SVG, 'path');
    ring.setAttribute('class', 'reticle');
    ring.setAttribute('stroke-width', 1.4 * k);
    ring.setAttribute('d', `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0M${x - r - 6 * k} ${y}h${6 * k}M${x + r} ${y}h${6 * k}M${x} ${y - r - 6 * k}v${6 * k}M${x} ${y + r}v${6 * k}${this.cut ? this.across(piece, 9 * k) : ''}`);
    this.svg.append(ring);
    return piece;
  }

  // A stroke across a tube where it was clicked: there it can be split.
  across(piece, half) {
    const path = piece.querySelector('path');
    const length = path.getTotalLength();
    const [x, y] = this.cut.at;
    const far = along => { const on = path.getPointAtLength(along); return Math.hypot(on.x - x, on.y - y); };
    const best = Array.from({length: 201}, (_, n) => n / 200 * length).reduce((a, b) => far(b) < far(a) ? b : a);
    const [on, a, b] = [best, Math.max(0, best - 1), Math.min(length, best + 1)].map(along => path.getPointAtLength(along));
    const k = half / (Math.hypot(b.x - a.x, b.y - a.y) || 1);
    return `M${on.x - k * (b.y - a.y)} ${on.y + k * (b.x - a.x)}L${on.x + k * (b.y - a.y)} ${on.y - k * (b.x - a.x)}`;
  }

  middle(piece) {
    if (piece.dataset.inlet) {
      const circle = piece.querySelector('circle');
      return {x: Number(circle.getAttribute('cx')), y: Number(circle.getAttribute('cy'))};
    }
    const path = piece.querySelector('path');
    return path.getPointAtLength(path.getTotalLength() / 2);
  }

  // The nearest piece in a direction, those straight ahead before those aside.
  towards(kind, id, dx, dy) {
    const from = kind && this.find(kind, id);
    const at = from ? this.middle(from) : {x: 0, y: 0};
    let best = null;
    for (const piece of this.pieces()) {
      const to = this.middle(piece);
      const ahead = (to.x - at.x) * dx + (to.y - at.y) * dy;
      const aside = Math.abs((to.x - at.x) * dy) + Math.abs((to.y - at.y) * dx);
      if (piece === from || (from && ahead <= 0.5)) continue;
      const cost = from ? ahead + 2.5 * aside : to.x + to.y;
      if (!best || cost < best.cost) best = {cost, piece};
    }
    return best?.piece;
  }

  // Moves the sheet so that a piece is in sight; leaves it where it is.
  inSight(kind, id) {
    const piece = this.find(kind, id);
    if (!piece || !this.box) return;
    const {x, y} = this.middle(piece);
    const [left, top, wide, high] = this.box;
    if (x > left + 0.08 * wide && x < left + 0.92 * wide && y > top + 0.08 * high && y < top + 0.92 * high) return;
    this.look([x - wide / 2, y - high / 2, wide, high]);
  }

  // A piece large and in the middle.
  to(kind, id) {
    const piece = this.find(kind, id);
    if (!piece) return;
    const {x, y} = this.middle(piece);
    const [, , wide, high] = this.home.split(' ').map(Number);
    this.look([x - wide / 8, y - high / 8, wide / 4, high / 4]);
  }

  now() { return this.box ?? this.svg.getAttribute('viewBox').split(' ').map(Number); }

  // Sheet units of one pixel of the screen; asked once for each size and part that is seen, as asking lays out the page.
  get pixel() { return this.scaled ??= 1 / (this.svg?.getScreenCTM()?.a || 1); }

  // Whether a metre is large enough to read all that is written of tubing; a scheme has none.
  get close() { return this.sheet?.kind === 'SCHEME' || (this.sheet?.scale ?? 0) > CLOSE_px * this.pixel; }

  get zoomed() { return !!this.box && this.box[2] < 0.99 * Number(this.home.split(' ')[2]); }

  // Shows this part of the sheet, its middle never off the drawing; null for all.
  look(box) {
    if (!this.svg) return;
    const [left, top, wide, high] = this.home.split(' ').map(Number);
    const inside = (from, size, least, most) => Math.max(least, Math.min(most, from + size / 2)) - size / 2;
    this.box = box && [inside(box[0], box[2], left, left + wide), inside(box[1], box[3], top, top + high), box[2], box[3]];
    this.svg.setAttribute('viewBox', this.box?.join(' ') ?? this.home);
    this.place.classList.toggle('zoomed', this.zoomed);
    this.seen();
  }

  // What keeps its size on the screen is drawn anew for the part that is seen.
  seen() {
    this.scaled = undefined;
    this.hand?.overlay();
    this.under?.draw();
    if (this.svg) this.ring();
    this.relabel();
  }

  // Letters and labels for a paper, or for the screen again.
  paper(on) {
    if (!this.svg) return;
    cancelAnimationFrame(this.lettered);
    this.lettered = undefined;
    letter(this.svg, this.marked.id, this.close, on ? PAPER_px : null);
  }

  // In the next frame, or after it: colours come before words.
  relabel(after = false) {
    const write = () => {
      this.lettered = undefined;
      if (this.svg && !this.drag?.moved) letter(this.svg, this.marked.id, this.close);
    };
    this.lettered ??= requestAnimationFrame(after ? () => setTimeout(write) : write);
  }

  zoom(factor, x, y) {
    if (!this.svg) return;
    const [left, top, wide, high] = this.now();
    const [, , most] = this.home.split(' ').map(Number);
    const next = Math.min(most * 4, Math.max(most / 40, wide / factor));
    const share = next / wide;
    x ??= left + wide / 2;
    y ??= top + high / 2;
    this.look([x - (x - left) * share, y - (y - top) * share, next, high * share]);
  }

  // By so many pixels, from a box that was shown.
  pan(dx, dy, [left, top, wide, high] = this.now()) {
    const k = this.pixel;
    this.look([left - dx * k, top - dy * k, wide, high]);
  }

  all() { this.look(null); }

  onSheet(event) {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
    return [point.x, point.y];
  }

  wheel(event) {
    if (!this.svg) return;
    event.preventDefault();
    const pixels = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1);
    this.zoom(Math.exp(-Math.max(-100, Math.min(100, pixels)) / 550), ...this.onSheet(event));
  }

  down(event) {
    if (!this.svg || this.touch.down(event) || event.button !== 0 || this.hand?.down(event)) return;
    this.drag = {x: event.clientX, y: event.clientY, box: this.now(), moved: false, piece: this.touch.piece(event)};
  }

  move(event) {
    if (this.touch.move(event) || this.hand?.move(event) || !this.drag) return;
    const dx = event.clientX - this.drag.x;
    const dy = event.clientY - this.drag.y;
    if (!this.drag.moved && Math.hypot(dx, dy) < (event.pointerType === 'touch' ? 10 : 4)) return;
    if (!this.drag.moved) this.place.setPointerCapture(event.pointerId);
    this.drag.moved = true;
    if (event.pointerType !== 'touch' || this.zoomed) this.pan(dx, dy, this.drag.box);
  }

  up(event) {
    if (this.touch.up(event) || this.hand?.up(event)) return;
    const drag = this.drag;
    this.drag = null;
    if (drag?.moved) this.relabel();
    if (drag && !drag.moved && this.hand?.click(event)) return;
    if (drag && !drag.moved && drag.piece) {
      const kind = drag.piece.dataset.inlet ? 'inlet' : 'run';
      this.chosen(kind, drag.piece.dataset[kind], this.onSheet(event));
    }
  }
}
