// The picture of the floor under the drawing: handed in, put in its place by two of its points, faded, taken away.
import {element} from './element.js';
import {ask, change} from './server.js';

const SVG = 'http://www.w3.org/2000/svg';
const LARGEST_bytes = 6_000_000;
const FADED = 'floor plan faded';
const kinds = '.png,.jpg,.jpeg,.pdf,image/png,image/jpeg,application/pdf';

export class FloorPlan {
  // page: {say, length, typed, panel}
  constructor(drawing, page) {
    this.drawing = drawing;
    this.page = page;
    this.plan = {number: 0};
    this.pins = [];
    this.faded = Number(localStorage.getItem(FADED) ?? 0.5);
    drawing.under = this;
  }

  async load() {
    const plan = await ask('floorplan', '/api/floorplan');
    if (plan) this.take(plan);
  }

  take(plan) {
    if (plan.number === this.plan.number) return;
    this.plan = plan;
    this.pins = [];
    if (!plan.number) this.image = null;
    else {
      this.image = document.createElementNS(SVG, 'image');
      this.image.setAttribute('class', 'floor');
      this.image.setAttribute('width', plan.width_px);
      this.image.setAttribute('height', plan.height_px);
      this.image.setAttribute('href', `/api/floorplan/picture?n=${plan.number}`);
      this.image.setAttribute('aria-hidden', 'true');
    }
    this.draw();
    this.page.panel();
  }

  // Puts the picture under what was just drawn; on a plan and on an isometric view alike it lies on the floor.
  draw() {
    const svg = this.drawing.svg;
    if (!svg) return;
    for (const old of svg.querySelectorAll('.floor, .pin')) old.remove();
    if (!this.image || !this.drawing.sheet || this.drawing.sheet.kind === 'SCHEME') return;
    const matrix = this.matrix();
    this.image.setAttribute('transform', `matrix(${matrix.join(' ')})`);
    this.image.style.opacity = this.faded;
    svg.prepend(this.image);
    const pixel = 1 / (svg.getScreenCTM()?.a || 1);
    this.pins.forEach((pin, n) => {
      const [x, y] = this.apply(matrix, pin);
      const mark = document.createElementNS(SVG, 'g');
      mark.setAttribute('class', 'pin');
      mark.innerHTML = `<path d="M${x - 9 * pixel} ${y}h${18 * pixel}M${x} ${y - 9 * pixel}v${18 * pixel}" stroke-width="${1.5 * pixel}"/><text x="${x + 6 * pixel}" y="${y - 6 * pixel}" font-size="${13 * pixel}">${n + 1}</text>`;
      svg.append(mark);
    });
  }

  // The cross begins in the middle and goes a fiftieth of the width at a time, or a tenth of that.
  middle() { return this.inBuilding({u: this.plan.width_px / 2, v: this.plan.height_px / 2}); }

  stride(fine) { return this.plan.metresPerPoint * this.plan.width_px / (fine ? 500 : 50); }

  // From points of the picture to the sheet, at floor height.
  matrix() {
    const {x_m, y_m, metresPerPoint: s, turned} = this.plan;
    const [c, n] = [Math.cos(turned), Math.sin(turned)];
    const sheet = (u, v) => this.drawing.onSheetAt({x: x_m + s * (u * c + v * n), y: y_m + s * (u * n - v * c), z: 0});
    const [o, right, down] = [sheet(0, 0), sheet(1, 0), sheet(0, 1)];
    return [right[0] - o[0], right[1] - o[1], down[0] - o[0], down[1] - o[1], ...o];
  }

  apply([a, b, c, d, e, f], {u, v}) { return [a * u + c * v + e, b * u + d * v + f]; }

  onPicture([x, y]) {
    const [a, b, c, d, e, f] = this.matrix();
    const det = a * d - b * c;
    return {u: (d * (x - e) - c * (y - f)) / det, v: (a * (y - f) - b * (x - e)) / det};
  }

  inBuilding({u, v}) {
    const {x_m, y_m, metresPerPoint: s, turned} = this.plan;
    return {x: x_m + s * (u * Math.cos(turned) + v * Math.sin(turned)), y: y_m + s * (u * Math.sin(turned) - v * Math.cos(turned))};
  }

  click(at) {
    if (!this.plan.number) { this.page.say('Take a picture in first: PNG, JPEG or the first page of a PDF.'); return; }
    const pin = this.onPicture(at);
    if (pin.u < 0 || pin.v < 0 || pin.u > this.plan.width_px || pin.v > this.plan.height_px) { this.page.say('That is beside the picture.'); return; }
    this.pinAt(pin);
  }

  pinAt(pin) {
    this.pins = this.pins.length === 2 ? [pin] : [...this.pins, {...pin}];
    this.draw();
    this.page.panel();
  }

  async hand(file) {
    if (file.size > LARGEST_bytes) { this.page.say(`Not taken: a picture has at most 6 MB; this has ${(file.size / 1e6).toFixed(1)} MB.`, 12000); return; }
    const result = await change(`/api/floorplan/picture?number=${this.plan.number}`, file);
    if (result.away) { this.page.say('Not taken: the studio is not answering. Choose the picture again once it answers.', 0); return; }
    if (!result.ok) { this.refused(result.stale, `Not taken: ${result.content.why}`); return; }
    this.take(result.content);
    this.page.say('The picture lies as wide as the plant. Click two of its points that you know, the farther apart the better.', 12000);
  }

  async pin(places) {
    const result = await change('/api/floorplan', {number: this.plan.number, pins: this.pins.map((pin, n) => ({...pin, ...places[n]}))});
    if (!result.ok) { this.refused(result.stale, result.content.why); return; }
    this.take(result.content);
    this.page.say(`The floor plan lies by its two points: one point of it is ${(1000 * result.content.metresPerPoint).toPrecision(3)} mm.`);
  }

  async away() {
    const result = await change('/api/floorplan/away', {number: this.plan.number});
    if (result.ok) this.take(result.content); else this.refused(result.stale, result.content.why);
  }

  refused(stale, why) {
    this.page.say(why, 12000);
    if (stale) this.load();
  }

  back() {
    if (!this.pins.length) return false;
    this.pins.pop();
    this.draw();
    this.page.panel();
    return true;
  }

  // ---------------------------------------------------------------- what stands in the margin column

  fill(box) {
    const file = element('input', {type: 'file', accept: kinds, 'aria-label': 'Picture of the floor'});
    file.addEventListener('change', () => { if (file.files[0]) this.hand(file.files[0]); });
    const head = element('div', {class: 'headline'}, element('h2', {}, 'Floor plan'), element('span', {class: 'cap'}, this.plan.number ? `${this.plan.width_px} × ${this.plan.height_px} points` : 'none yet'));
    const parts = [head, element('div', {class: 'acts'}, element('label', {}, 'PNG, JPEG or PDF, first page ', file))];
    if (this.plan.number) {
      const fade = element('input', {type: 'range', min: '0.1', max: '1', step: '0.1', value: String(this.faded), 'aria-label': 'Strength of the picture'});
      fade.addEventListener('input', () => { this.faded = Number(fade.value); localStorage.setItem(FADED, fade.value); this.draw(); });
      parts.push(element('div', {class: 'acts'}, element('label', {}, 'Strength ', fade), element('button', {type: 'button', on: () => this.away()}, 'Take the picture away')));
      parts.push(...this.pinned());
    }
    box.replaceChildren(...parts);
  }

  pinned() {
    if (this.pins.length < 2) return [element('p', {class: 'cap'}, `Click point ${this.pins.length + 1} on the picture: a corner, a column, a machine whose place you know. Without a pointer: arrows walk a cross, Shift makes its steps small, Enter takes the point.`)];
    const places = this.pins.map(pin => this.inBuilding(pin));
    const field = (name, metres) => element('input', {'aria-label': name, value: this.page.length(metres), size: '8', autocomplete: 'off'});
    const fields = places.map((place, n) => [field(`Point ${n + 1}, east`, place.x), field(`Point ${n + 1}, north`, place.y)]);
    const apart = field('Distance between the points', Math.hypot(places[1].x - places[0].x, places[1].y - places[0].y));
    const number = input => this.page.typed(input.value);
    const take = wanted => { if (wanted.some(one => one.x === null || one.y === null)) this.page.say(`Where? ${this.page.why()}`); else this.pin(wanted); };
    const byPlaces = () => take(fields.map(([x, y]) => ({x: number(x), y: number(y)})));
    const byDistance = () => {
      const wanted = number(apart);
      if (!(wanted > 0)) { this.page.say(`How far apart are the two points? ${wanted === null ? this.page.why() : 'More than 0.'}`); return; }
      const first = {x: number(fields[0][0]), y: number(fields[0][1])};
      if (first.x === null || first.y === null) { this.page.say(`Where? ${this.page.why()}`); return; }
      const [dx, dy] = [places[1].x - places[0].x, places[1].y - places[0].y];
      const share = wanted / Math.hypot(dx, dy);
      take([first, {x: first.x + dx * share, y: first.y + dy * share}]);
    };
    return [element('p', {class: 'cap'}, 'Where the two points are in the building, from its origin; or how far apart they are, the first staying where it says.'),
      ...fields.map((pair, n) => element('div', {class: 'acts'}, element('span', {}, `Point ${n + 1}`), ...pair.map((one, k) => element('label', {}, k ? 'north ' : 'east ', one)))),
      element('div', {class: 'acts'}, element('button', {type: 'button', on: byPlaces}, 'Lay by both places'), element('label', {}, 'apart ', apart), element('button', {type: 'button', on: byDistance}, 'Lay by distance'))];
  }
}
