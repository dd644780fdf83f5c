// The drawing under the hand: what is pointed at, zoom and pan, the reticle round the chosen piece.
const SVG = 'http://www.w3.org/2000/svg';
const COS_30 = Math.sqrt(3) / 2;

export class Drawing {
  constructor(place, chosen) {
    this.place = place;
    this.chosen = chosen;
    this.box = null;
    this.home = null;
    this.hand = null;
    this.under = null;
    this.sheet = null;
    place.addEventListener('wheel', event => this.wheel(event), {passive: false});
    place.addEventListener('pointerdown', event => this.down(event));
    place.addEventListener('pointermove', event => this.move(event));
    place.addEventListener('pointerup', event => this.up(event));
    place.addEventListener('pointercancel', () => { this.drag = null; this.hand?.back(); });
  }

  get svg() { return this.place.querySelector('svg'); }

  show(markup, sheet) {
    this.place.innerHTML = markup;
    this.sheet = sheet;
    const svg = this.svg;
    if (!svg) return;
    svg.removeAttribute('width');
    svg.removeAttribute('height');
    svg.setAttribute('role', 'group');
    const home = svg.getAttribute('viewBox');
    if (home !== this.home) { this.home = home; this.box = null; }
    if (this.box) svg.setAttribute('viewBox', this.box.join(' '));
    for (const run of svg.querySelectorAll('[data-run]')) {
      const reach = run.querySelector('path').cloneNode();
      for (const name of ['stroke', 'stroke-width', 'stroke-dasharray', 'fill']) reach.removeAttribute(name);
      reach.setAttribute('class', 'catch');
      run.append(reach);
      this.name(run, `tube ${run.dataset.run}`);
    }
    for (const inlet of svg.querySelectorAll('[data-inlet]')) {
      const circle = inlet.querySelector('circle');
      const reach = document.createElementNS(SVG, 'circle');
      reach.setAttribute('cx', circle.getAttribute('cx'));
      reach.setAttribute('cy', circle.getAttribute('cy'));
      reach.setAttribute('r', Math.max(9, Number(circle.getAttribute('r')) + 3));
      reach.setAttribute('class', 'catch');
      inlet.append(reach);
      const open = circle.getAttribute('fill') !== '#FFFFFF';
      this.name(inlet, `inlet ${inlet.dataset.inlet}, ${open ? 'open' : 'closed'}`);
    }
    this.under?.draw();
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

  find(kind, id) { return this.pieces().find(piece => piece.dataset[kind] === id); }

  mark(kind, id) {
    this.place.querySelector('.reticle')?.remove();
    const piece = kind && this.find(kind, id);
    if (!piece) return;
    const {x, y} = this.middle(piece);
    const r = kind === 'inlet' ? 13 : 16;
    const ring = document.createElementNS(SVG, 'path');
    ring.setAttribute('class', 'reticle');
    ring.setAttribute('d', `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0M${x - r - 6} ${y}h6M${x + r} ${y}h6M${x} ${y - r - 6}v6M${x} ${y + r}v6`);
    this.svg.append(ring);
    for (const other of this.pieces()) other.setAttribute('tabindex', other === piece ? '0' : '-1');
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

  look(box) {
    this.box = box;
    this.svg.setAttribute('viewBox', box.join(' '));
    this.hand?.overlay();
    this.under?.draw();
  }

  now() { return this.box ?? this.svg.getAttribute('viewBox').split(' ').map(Number); }

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

  all() {
    this.box = null;
    this.svg?.setAttribute('viewBox', this.home);
    this.hand?.overlay();
    this.under?.draw();
  }

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
    if (!this.svg || event.button !== 0 || this.hand?.down(event)) return;
    this.drag = {x: event.clientX, y: event.clientY, box: this.now(), moved: false, piece: event.target.closest('[data-run], [data-inlet]')};
  }

  move(event) {
    if (this.hand?.move(event) || !this.drag) return;
    const dx = event.clientX - this.drag.x;
    const dy = event.clientY - this.drag.y;
    if (!this.drag.moved && Math.hypot(dx, dy) < 4) return;
    if (!this.drag.moved) this.place.setPointerCapture(event.pointerId);
    this.drag.moved = true;
    const scale = this.svg.getScreenCTM().a;
    const [left, top, wide, high] = this.drag.box;
    this.box = [left - dx / scale, top - dy / scale, wide, high];
    this.svg.setAttribute('viewBox', this.box.join(' '));
  }

  up(event) {
    if (this.hand?.up(event)) return;
    const drag = this.drag;
    this.drag = null;
    if (drag && !drag.moved && this.hand?.click(event)) return;
    if (drag && !drag.moved && drag.piece) {
      const kind = drag.piece.dataset.inlet ? 'inlet' : 'run';
      this.chosen(kind, drag.piece.dataset[kind]);
    }
  }
}
