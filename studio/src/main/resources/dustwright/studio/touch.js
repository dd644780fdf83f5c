// Fingers on the drawing: two zoom about their middle, one drags the sheet once it is zoomed in and scrolls the page otherwise.
const FINGER = 22;

export class Touch {
  constructor(drawing) {
    this.drawing = drawing;
    this.fingers = new Map();
    this.pinched = false;
    const ours = event => { if (event.cancelable && (event.touches.length > 1 || drawing.hand?.drag)) event.preventDefault(); };
    drawing.place.addEventListener('touchstart', ours, {passive: false});
    drawing.place.addEventListener('touchmove', ours, {passive: false});
  }

  // Each gives true where the fingers took it.
  down(event) {
    if (event.pointerType !== 'touch') return false;
    this.fingers.set(event.pointerId, [event.clientX, event.clientY]);
    if (this.fingers.size < 2) { this.pinched = false; return false; }
    this.pinched = true;
    this.drawing.drag = null;
    this.drawing.hand?.drop();
    return true;
  }

  move(event) {
    if (!this.fingers.has(event.pointerId)) return false;
    const before = this.spread();
    this.fingers.set(event.pointerId, [event.clientX, event.clientY]);
    const after = this.spread();
    if (before && after) {
      this.drawing.pan(after.x - before.x, after.y - before.y);
      this.drawing.zoom(after.apart / before.apart, ...this.drawing.onSheet({clientX: after.x, clientY: after.y}));
    }
    return this.pinched;
  }

  up(event) {
    if (!this.fingers.has(event.pointerId)) return false;
    this.gone(event);
    return this.pinched;
  }

  gone(event) { this.fingers.delete(event.pointerId); }

  spread() {
    if (this.fingers.size !== 2) return null;
    const [[ax, ay], [bx, by]] = [...this.fingers.values()];
    return {x: (ax + bx) / 2, y: (ay + by) / 2, apart: Math.max(1, Math.hypot(bx - ax, by - ay))};
  }

  // What a pointer means: the piece under it; for a finger the nearest one in its reach, inlets before tubes.
  piece(event) {
    const under = event.target.closest('[data-run], [data-inlet]');
    if (event.pointerType !== 'touch' || under?.dataset.inlet) return under;
    const at = this.drawing.onSheet(event);
    const reach = FINGER * this.drawing.pixel;
    const near = this.drawing.pieces().filter(one => one.dataset.inlet).map(one => {
      const {x, y} = this.drawing.middle(one);
      return {one, far: Math.hypot(x - at[0], y - at[1])};
    }).filter(({far}) => far < (under ? reach / 2 : reach)).sort((a, b) => a.far - b.far)[0];
    return near?.one ?? under ?? this.tube(at, reach);
  }

  tube(at, reach) {
    let best = null;
    for (const one of this.drawing.pieces().filter(piece => piece.dataset.run)) {
      const path = one.querySelector('path');
      const long = path.getTotalLength();
      for (let n = 0; n <= 24; n++) {
        const {x, y} = path.getPointAtLength(long * n / 24);
        const far = Math.hypot(x - at[0], y - at[1]);
        if (far < reach && (!best || far < best.far)) best = {far, one};
      }
    }
    return best?.one ?? null;
  }
}
