// The hand that draws: takes places and moves them, lays inlets and tubes, measures. What it asks for, the studio does to the text.
import {Cross} from './cross.js';
import {length} from './length.js';
import {ask, changePlant} from './server.js';

const SVG = 'http://www.w3.org/2000/svg';
const NEAR = 14;
const NEAR_FINGER = 24;
const FOOT = 0.3048;
const LAYING = ['inlet', 'tube', 'wall', 'machine', 'measure', 'floor'];
const KINDS = ['inlet', 'point', 'station', 'panel', 'corner'];
const key = place => `${place.kind} ${place.id} ${place.corner}`;
const FINGERS = matchMedia('(pointer: coarse)').matches;

export class Hand {
  // page: {unsent, notAnswering, view, units, version, chosen, adopt, choose, shown, say, panel, floor, cross}
  constructor(drawing, page) {
    this.drawing = drawing;
    this.page = page;
    this.mode = 'look';
    this.taken = [];
    this.corners = [];
    this.from = null;
    this.places = null;
    this.held = [];
    this.on = null;
    this.what = 'receiver';
    this.cross = new Cross(this, page.cross, page.say);
    drawing.hand = this;
  }

  // ---------------------------------------------------------------- sheet and building

  async load() {
    if (this.mode === 'look') { this.places = null; this.overlay(); return; }
    const places = await ask('places', '/api/places', {view: this.page.view()});
    if (!places) return;
    this.places = places;
    const known = new Map(places.places.map(one => [key(one), one]));
    const still = list => list.map(one => known.get(key(one))).filter(Boolean);
    this.taken = still(this.taken);
    this.held = still(this.held);
    this.on = this.on && known.get(key(this.on));
    this.overlay();
    this.panel();
  }

  get flat() { return this.drawing.sheet?.kind === 'PLAN'; }

  onSheet(place) { return this.drawing.onSheetAt(place); }

  // Where a place of the sheet is in the building at a height; in a plan only.
  inBuilding([sx, sy], z) {
    const {scale, left, top, tilt} = this.drawing.sheet;
    return {x: (sx - left) / scale - tilt * z, y: (top - sy) / scale - tilt * z, z};
  }

  get pixel() { return this.drawing.pixel; }

  get snap() { return this.page.units() === 'us' ? FOOT / 4 : 0.1; }

  length(metres) { return this.page.units() === 'us' ? `${(metres / FOOT).toFixed(1)} ft` : `${metres.toFixed(2)} m`; }

  // What was understood, in the units of both systems.
  both(metres) { return `${(metres / FOOT).toFixed(2)} ft · ${metres.toFixed(2)} m`; }

  // Of a number that is typed without one: as of a coordinate in the plant file, whatever the page shows.
  get unit() { return this.places?.unit ?? ''; }

  // Metres; null where it is no length, and then why says so.
  typed(text) {
    const {metres, why} = length(text, this.unit, this.places?.lengths ?? {});
    if (why) this.why = `${why[0].toUpperCase()}${why.slice(1)}. Type a length such as 2.5 m, 18 in or 6'.`;
    return metres ?? null;
  }

  nearest(at, kinds) {
    let best = null;
    for (const place of this.places?.places ?? []) {
      if (!kinds.includes(place.kind)) continue;
      const [x, y] = this.onSheet(place);
      const far = Math.hypot(x - at[0], y - at[1]);
      if (far < (this.near ?? NEAR) * this.pixel && (!best || far < best.far)) best = {far, place};
    }
    return best?.place;
  }

  // ---------------------------------------------------------------- modes

  async set(mode) {
    this.mode = mode;
    this.taken = mode === 'move' ? this.taken : [];
    this.held = [];
    this.on = null;
    this.cross.at = this.at = null;
    this.corners = [];
    this.from = null;
    this.first = null;
    this.drawing.place.dataset.hand = mode;
    await this.load();
    if (mode !== 'look' && this.places && this.drawing.sheet?.kind === 'SCHEME') {
      this.page.say('This plant is given by lengths: its pieces have no places to draw at. Give its points and inlets places in Text first.');
      this.mode = 'look';
    } else if (this.lays && !this.flat) {
      this.page.say('New pieces are laid, distances measured and the floor plan placed in the plan.');
      this.mode = 'look';
    }
    this.drawing.place.dataset.hand = this.mode;
    if (this.mode === 'move') this.follow(this.page.choice());
    this.panel();
    return this.mode;
  }

  hint() {
    return {
      look: `${FINGERS ? 'Tap' : 'Click'} an inlet to open or close it, a tube to see what is written of it. ${FINGERS ? 'Two fingers zoom; one moves the sheet then.' : 'Wheel zooms, drag moves the sheet.'}`,
      move: !this.places || this.flat ? 'Drag a place; tubing follows square. Shift takes several, Alt lets go of the grid. By keyboard: arrows walk, Enter holds one of several, Shift with an arrow moves.' : 'Drag a place up or down. Shift takes several.',
      inlet: 'Click where the new inlet is, or walk there by arrows and Enter: it is laid like the chosen inlet, with a drop into the nearest header.',
      tube: this.from ? 'Click the corners, then the point, the receiver or the tube it runs into. Esc takes the last corner back.' : 'Click the inlet or point where the tube begins, or walk there by arrows and Enter.',
      wall: this.corners.length ? 'Click the next corner; Enter, or a click on the last corner again, ends the wall. Esc takes a corner back.' : 'Click where the wall begins, or walk there by arrows and Enter.',
      machine: this.machineHint(),
      floor: 'Click two points of the picture whose places you know, or walk there by arrows and Enter. Esc takes the last point back.',
      measure: this.first ? 'Click the other end.' : 'Click one end of what is measured, or walk there by arrows and Enter.',
    }[this.mode];
  }

  machineHint() {
    if (this.what === 'panel') return 'Click where the control panel stands, or walk there by arrows and Enter.';
    if (this.what !== 'receiver') return `Click the receiver it belongs to, or walk there by arrows and Enter: its figures are asked for in the margin column.`;
    return this.from ? 'Click the corners of its tube; once more on the last corner, or Enter there, and the receiver stands. Esc takes the last corner back.' : 'Click the inlet or point from which a tube leads to the new receiver, or walk there by arrows and Enter. It is set up like the chosen station.';
  }

  // ---------------------------------------------------------------- the pointer; true where the hand took it

  down(event) {
    if (this.mode === 'look' || !this.places) return false;
    this.near = event.pointerType === 'touch' ? NEAR_FINGER : NEAR;
    const at = this.drawing.onSheet(event);
    if (this.mode !== 'move') return false;
    const place = this.nearest(at, KINDS);
    if (!place) {
      if (event.shiftKey) { this.box = {from: at, to: at}; this.drawing.place.setPointerCapture(event.pointerId); return true; }
      return false;
    }
    if (event.shiftKey) {
      this.take(this.taken.includes(place) ? this.taken.filter(one => one !== place) : [...this.taken, place]);
      return true;
    }
    if (!this.taken.includes(place)) this.take([place]);
    this.drawing.place.setPointerCapture(event.pointerId);
    this.drag = {place, from: at, by: {dx: 0, dy: 0, dz: 0}, moved: false};
    this.overlay(); this.panel();
    return true;
  }

  move(event) {
    if (this.mode === 'look' || !this.places) return false;
    const at = this.drawing.onSheet(event);
    if (this.box) { this.box.to = at; this.overlay(); return true; }
    if (this.drag) {
      if (!this.drag.moved && Math.hypot(at[0] - this.drag.from[0], at[1] - this.drag.from[1]) < 4 * this.pixel) return true;
      this.drag.moved = true;
      this.drag.by = this.by(at, event.altKey);
      this.overlay();
      return true;
    }
    if (this.from || this.mode === 'wall' && this.corners.length || this.mode === 'measure' && this.first) { this.at = at; this.overlay(); }
    return false;
  }

  by(at, free) {
    const {place, from} = this.drag;
    const {scale} = this.drawing.sheet;
    const round = metres => free ? metres : Math.round(metres / this.snap) * this.snap;
    if (!this.flat) return {dx: 0, dy: 0, dz: round(place.z + (from[1] - at[1]) / scale) - place.z};
    const aligned = (wanted, axis) => {
      if (free) return wanted;
      const reach = 6 * this.pixel / scale;
      const line = this.places.places.filter(one => !this.taken.includes(one) && Math.abs(one[axis] - wanted) < reach)
        .sort((a, b) => Math.abs(a[axis] - wanted) - Math.abs(b[axis] - wanted))[0];
      return line ? line[axis] : round(wanted);
    };
    const wall = free ? null : this.onWall({x: place.x + (at[0] - from[0]) / scale, y: place.y + (from[1] - at[1]) / scale, z: place.z});
    if (wall) return {dx: wall.x - place.x, dy: wall.y - place.y, dz: 0};
    return {dx: aligned(place.x + (at[0] - from[0]) / scale, 'x') - place.x, dy: aligned(place.y + (from[1] - at[1]) / scale, 'y') - place.y, dz: 0};
  }

  // The foot on the wall beside a place, where one of its floor is as near as a finger; else null.
  onWall({x, y, z}) {
    let best = null;
    for (const {corners} of this.places.walls) {
      for (let i = 1; i < corners.length; i++) {
        const [a, b] = [corners[i - 1], corners[i]];
        const [dx, dy] = [b.x_m - a.x_m, b.y_m - a.y_m];
        const share = Math.max(0, Math.min(1, ((x - a.x_m) * dx + (y - a.y_m) * dy) / (dx * dx + dy * dy || 1)));
        const foot = {x: a.x_m + share * dx, y: a.y_m + share * dy, z};
        const far = Math.hypot(foot.x - x, foot.y - y) * this.drawing.sheet.scale / this.pixel;
        if (far < NEAR / 2 && (!best || far < best.far)) best = {far, foot};
      }
    }
    return best?.foot ?? null;
  }

  up(event) {
    if (this.mode === 'look' || !this.places) return false;
    if (this.box) { this.boxed(); return true; }
    if (this.drag) {
      const drag = this.drag;
      this.drag = null;
      this.overlay();
      if (drag.moved) this.shift(drag.by);
      return true;
    }
    return false;
  }

  // A click that was no drag.
  click(event) {
    if (this.mode === 'look' || !this.places) return false;
    // A tube is chosen as in the hand one starts with.
    if (this.mode === 'move') { this.clear(); return !event.target.closest('[data-run]'); }
    this.put(this.drawing.onSheet(event), event.target.closest('[data-run]')?.dataset.run, event.altKey);
    return true;
  }

  // At this place of the sheet, on this tube or none; free of grid and walls or drawn to them.
  put(at, run, free) {
    if (this.mode === 'inlet') this.inlet(at, free);
    if (this.mode === 'tube') this.tube(at, run, free);
    if (this.mode === 'wall') this.wall(at, free);
    if (this.mode === 'machine') this.machine(at, free);
    if (this.mode === 'measure') this.measure(at);
    if (this.mode === 'floor') this.page.floor.click(at);
  }

  clear() { this.held = []; this.on = null; this.take([]); return true; }

  // ---------------------------------------------------------------- what is taken is what is shown

  take(places) {
    this.taken = places;
    this.overlay(); this.panel();
    this.page.shown(places.length === 1 ? places[0] : null);
  }

  // What was chosen elsewhere, in a finding or by its name, is what is taken.
  follow({kind, id}) {
    if (this.mode !== 'move' || !this.places) return;
    const one = this.taken.length === 1 ? this.taken[0] : null;
    if (one ? kind === shownAs(one) && id === one.id : !kind) return;
    const found = this.places.places.find(place => place.kind === kind && place.id === id) ?? null;
    this.on = found;
    if (!found) this.held = [];
    if (this.held.length) { this.take([...this.held.filter(place => place !== found), found]); return; }
    this.taken = found ? [found] : [];
    this.overlay(); this.panel();
  }

  // Arrows walk over all that can be moved: the nearest place that way, those straight ahead before those aside.
  walk(dx, dy) {
    if (this.mode !== 'move' || !this.places) return false;
    const from = this.on ?? this.taken.at(-1);
    const [fx, fy] = from ? this.onSheet(from) : [0, 0];
    let best = null;
    for (const place of this.places.places) {
      const [x, y] = this.onSheet(place);
      const ahead = (x - fx) * dx + (y - fy) * dy;
      const aside = Math.abs((x - fx) * dy) + Math.abs((y - fy) * dx);
      if (from && ahead <= 0.5) continue;
      const cost = from ? ahead + 2.5 * aside : x + y;
      if (!best || cost < best.cost) best = {cost, place};
    }
    if (!best) return true;
    this.on = best.place;
    this.inSight(this.onSheet(best.place));
    this.take([...this.held.filter(one => one !== best.place), best.place]);
    this.page.say(`${named(best.place)}${this.held.length ? `, ${this.taken.length} taken` : ''}.`);
    return true;
  }

  // Enter holds the place one stands on while walking on; once more lets go of it.
  hold() {
    if (!this.on) return false;
    this.held = this.held.includes(this.on) ? this.held.filter(one => one !== this.on) : [...this.held, this.on];
    this.take([...new Set([...this.held, this.on])]);
    this.page.say(this.held.includes(this.on) ? `${named(this.on)} is held; ${this.held.length} held. Arrows take another besides, Esc lets go.` : `${named(this.on)} is let go.`);
    return true;
  }

  // ---------------------------------------------------------------- the cross

  get lays() { return LAYING.includes(this.mode); }

  get ready() { return this.mode !== 'floor' || this.page.floor.plan.number > 0; }

  stride(fine) { return this.mode === 'floor' ? this.page.floor.stride(fine) : fine ? this.snap : 5 * this.snap; }

  // Height of what is laid next.
  get level() {
    if (this.mode === 'inlet') return this.model(this.onSheet({...this.cross.at, z: 0}))?.z ?? 0;
    if (this.mode === 'machine' && this.what !== 'receiver') return this.what === 'panel' ? this.height ?? 0 : this.places.places.find(one => one.kind === 'station')?.z ?? 0;
    if (this.mode === 'tube' || this.mode === 'machine') return this.height ?? (this.corners.at(-1) ?? this.from ?? this.model(this.onSheet({...this.cross.at, z: 0})))?.z ?? 0;
    if (this.mode === 'measure') return (this.first && this.firstPlace?.z) ?? 0;
    return this.mode === 'wall' ? this.height ?? this.corners.at(-1)?.z ?? 0 : 0;
  }

  begins() {
    if (this.mode === 'floor') return this.page.floor.middle();
    const [left, top, wide, high] = this.drawing.now();
    const chosen = this.places.places.find(one => one.kind === 'inlet' && one.id === this.page.chosen());
    return this.corners.at(-1) ?? this.from ?? chosen ?? this.rounded(this.inBuilding([left + wide / 2, top + high / 2], 0));
  }

  run(at) { return this.drawing.touch.tube(at, 8 * this.pixel)?.dataset.run; }

  // Words for what lies at a place of the sheet.
  under(at) {
    if (this.mode === 'floor') return '';
    const place = this.nearest(at, KINDS);
    const run = !place && this.run(at);
    return place ? named(place) : run ? `tube ${run}` : '';
  }

  inSight([x, y]) {
    const [left, top, wide, high] = this.drawing.now();
    if (this.drawing.zoomed && (x < left || y < top || x > left + wide || y > top + high)) this.drawing.look([x - wide / 2, y - high / 2, wide, high]);
  }

  boxed() {
    const {from, to} = this.box;
    this.box = null;
    const [left, right] = [Math.min(from[0], to[0]), Math.max(from[0], to[0])];
    const [top, bottom] = [Math.min(from[1], to[1]), Math.max(from[1], to[1])];
    this.take(this.places.places.filter(place => {
      const [x, y] = this.onSheet(place);
      return x >= left && x <= right && y >= top && y <= bottom;
    }));
  }

  // What is in the middle of being dragged stays where it was.
  drop() { this.drag = this.box = null; this.overlay(); }

  // Esc: one thing back; false when there is nothing.
  back() {
    if (this.drag || this.box) { this.drop(); return true; }
    if (this.corners.length) { this.corners.pop(); this.overlay(); return true; }
    if (this.from || this.first) { this.from = this.first = null; this.overlay(); this.panel(); return true; }
    if (this.taken.length) return this.clear();
    return this.mode === 'floor' && this.page.floor.back();
  }

  // ---------------------------------------------------------------- what is done

  async act(body, done) {
    const result = await changePlant('/api/draw', {version: this.page.version(), ...body});
    if (result.away) {
      this.page.unsent.keepDrawn(body, this.page.version(), `Drawn: ${body.what}`);
      this.page.say('Not kept yet: the studio is not answering. What you drew waits in this page and will be sent; the drawing shows the plant without it.', 0);
      this.page.notAnswering();
      return [];
    }
    if (!result.ok) { this.page.say(`Not drawn: ${result.content.why}`, 12000); if (result.stale) this.page.reload(); return false; }
    await this.page.adopt(result.content.plant);
    if (done) this.page.say(done(result.content.laid));
    return result.content.laid;
  }

  shift(by) {
    if (!this.taken.length || !(by.dx || by.dy || by.dz)) return;
    const pieces = this.taken.map(({kind, id, corner}) => ({kind, id, corner}));
    return this.act({what: 'move', pieces, ...by});
  }

  // Where it was clicked, or in the middle of its longest straight.
  async split(run, at) {
    const laid = await this.act({what: 'split', run, ...(at ? {u: at[0], v: at[1], view: this.page.view()} : {})}, ids => `Split at ${ids[0]}: both runs keep size and figures. Move drags the new point.`);
    if (laid && laid.length) this.page.choose('point', laid[0]);
  }

  nudge(dx, dy, fine) {
    if (!this.taken.length) return false;
    const step = fine ? this.snap : 5 * this.snap;
    this.shift(this.flat ? {dx: dx * step, dy: -dy * step, dz: 0} : {dx: 0, dy: 0, dz: -dy * step});
    return true;
  }

  model(at) {
    const chosen = this.page.chosen();
    const inlets = this.places.places.filter(one => one.kind === 'inlet');
    const nearest = inlets.toSorted((a, b) => {
      const far = one => { const [x, y] = this.onSheet(one); return Math.hypot(x - at[0], y - at[1]); };
      return far(a) - far(b);
    })[0];
    return inlets.find(one => one.id === chosen) ?? nearest;
  }

  // Walls are drawn where they stand on their floor: the highest floor that is not above a place.
  floor(z) {
    const floors = this.places.walls.flatMap(wall => wall.corners.map(corner => corner.z_m)).filter(height => height <= z + 0.01);
    return floors.length ? Math.max(...floors) : z;
  }

  async inlet(at, free) {
    const like = this.model(at);
    if (!like) { this.page.say('There is no inlet to lay another one like it: add the first one under All figures, inlets.'); return; }
    const place = this.inBuilding(at, like.z);
    const {x, y} = free ? place : this.onWall(this.inBuilding(at, this.floor(like.z))) ?? this.rounded(place);
    const laid = await this.act({what: 'inlet', like: like.id, x, y, z: like.z},
      ids => `Inlet ${ids[0]} is laid like ${like.id}.`);
    if (laid && laid.length) this.page.choose('inlet', laid[0]);
  }

  tube(at, run, free) {
    const place = this.nearest(at, ['inlet', 'point', 'station']);
    if (!this.from) { this.begin(place); return; }
    const to = place && place.id !== this.from.id ? place.id : run;
    if (to) { this.finish(to); return; }
    this.corners.push(this.corner(at, free));
    this.soFar();
  }

  begin(place) {
    if (!place || place.kind === 'station') { this.page.say('A tube begins at an inlet or a point.'); return; }
    this.from = place;
    const height = this.height ?? place.z;
    if (Math.abs(height - place.z) > 0.01) this.corners.push({x: place.x, y: place.y, z: height});
    this.page.say(`The tube begins at ${place.id}.`);
    this.panel(); this.overlay();
  }

  corner(at, free) {
    const last = this.corners.at(-1) ?? this.from;
    const place = this.inBuilding(at, this.height ?? last.z);
    return free ? place : this.onWall(place) ?? this.square(last, this.rounded(place));
  }

  soFar() {
    this.page.say(`${this.corners.length === 1 ? '1 corner' : `${this.corners.length} corners`} so far.`);
    this.overlay();
  }

  // A receiver at the end of a tube of its own, a part of a receiver that is there, or the panel.
  machine(at, free) {
    if (this.what === 'panel') { this.setPanel(at, free); return; }
    if (this.what !== 'receiver') {
      const station = this.nearest(at, ['station']);
      if (!station) { this.page.say('Click the receiver it belongs to.'); return; }
      this.page.part(`stations.${station.id}.${this.what}`);
      return;
    }
    if (!this.from) { this.begin(this.nearest(at, ['inlet', 'point', 'station'])); return; }
    const corner = this.corner(at, free);
    const last = this.corners.at(-1);
    if (last && Math.hypot(corner.x - last.x, corner.y - last.y) < 0.02) { this.setReceiver(); return; }
    this.corners.push(corner);
    this.soFar();
  }

  async setReceiver() {
    const {from, corners} = this;
    const gone = this.goneWith();
    const laid = await this.act({what: 'station', from: from.id, corners, like: this.page.choice().kind === 'station' ? this.page.choice().id : '', tube: this.size ?? this.places.tubes[0]},
      ids => `Receiver ${ids[0]} stands${gone()}, with the figures of another station of this plant: see what is its own.`);
    if (!laid) return;
    this.from = null;
    this.corners = [];
    this.overlay(); this.panel();
    if (laid.length) this.page.choose('station', laid[0]);
  }

  // Words for the tubes that are gone with an act, such as the one that led from the same inlet before.
  goneWith() {
    const had = this.drawing.tubes();
    return () => {
      const now = new Set(this.drawing.tubes());
      const gone = had.filter(id => !now.has(id));
      return gone.length ? ` in place of ${gone.join(', ')}` : '';
    };
  }

  async setPanel(at, free) {
    const place = this.inBuilding(at, this.height ?? 0);
    const {x, y, z} = free ? place : this.onWall(place) ?? this.rounded(place);
    if (await this.act({what: 'panel', x, y, z}, () => 'The panel stands there, for the drawings.')) this.page.part('panel');
  }

  rounded({x, y, z}) {
    const round = metres => Math.round(metres / this.snap) * this.snap;
    return {x: round(x), y: round(y), z};
  }

  wall(at, free) {
    const last = this.corners.at(-1);
    const z = this.height ?? last?.z ?? 0;
    const place = this.inBuilding(at, z);
    const corner = free ? place : this.wallCorner(place) ?? (last ? this.square(last, this.rounded(place)) : this.rounded(place));
    if (last && Math.hypot(corner.x - last.x, corner.y - last.y) < 0.02) { this.finishWall(); return; }
    this.corners.push(corner);
    this.page.say(`${this.corners.length === 1 ? '1 corner' : `${this.corners.length} corners`} so far.`);
    this.panel(); this.overlay();
  }

  // A corner of a wall that is there, so that rooms close.
  wallCorner({x, y, z}) {
    const reach = NEAR * this.pixel / this.drawing.sheet.scale;
    const all = [...this.places.walls.flatMap(one => one.corners.map(c => ({x: c.x_m, y: c.y_m}))), ...this.corners];
    const near = all.filter(c => Math.hypot(c.x - x, c.y - y) < reach).sort((a, b) => Math.hypot(a.x - x, a.y - y) - Math.hypot(b.x - x, b.y - y))[0];
    return near ? {x: near.x, y: near.y, z} : null;
  }

  // True where Enter was for the hand.
  enter() {
    if (this.mode === 'move') return this.hold();
    if (this.cross.enter()) return true;
    if (this.mode !== 'wall' || this.corners.length < 2) return false;
    this.finishWall();
    return true;
  }

  async finishWall() {
    const corners = this.corners;
    if (corners.length < 2) return;
    if (!await this.act({what: 'wall', corners}, ids => `Wall ${ids[0]} is drawn.`)) return;
    this.corners = [];
    this.overlay(); this.panel();
  }

  // Along one axis, or at 45° to both, where it nearly is.
  square(last, at) {
    const dx = Math.abs(at.x - last.x);
    const dy = Math.abs(at.y - last.y);
    if (dx < 0.1 * dy) return {...at, x: last.x};
    if (dy < 0.1 * dx) return {...at, y: last.y};
    if (Math.abs(dx - dy) > 0.15 * Math.max(dx, dy)) return at;
    const along = (dx + dy) / 2;
    return {...at, x: last.x + Math.sign(at.x - last.x) * along, y: last.y + Math.sign(at.y - last.y) * along};
  }

  async finish(to) {
    const {from, corners} = this;
    const gone = this.goneWith();
    const laid = await this.act({what: 'tube', from: from.id, corners, to, tube: this.size ?? this.places.tubes[0]}, ids => `Tube ${ids[0]} is laid${gone()}.`);
    if (!laid) return;
    this.from = null;
    this.corners = [];
    this.overlay(); this.panel();
    if (laid.length) this.page.choose('run', laid[0]);
  }

  // Between the places that are pointed at, in their true positions: a plan leans by height. Elsewhere at the height of the other end, or of the floor.
  measure(at) {
    const place = this.nearest(at, KINDS);
    if (!this.first) { this.first = at; this.firstPlace = place; this.page.say('One end is taken.'); this.panel(); return; }
    const height = (place ?? this.firstPlace)?.z ?? 0;
    const from = this.firstPlace ?? this.inBuilding(this.first, height);
    const to = place ?? this.inBuilding(at, from.z);
    const east = to.x - from.x;
    const north = to.y - from.y;
    const up = to.z - from.z;
    const names = [this.firstPlace, place].map(one => !one ? 'the floor or level' : one.kind === 'corner' ? named(one) : one.id);
    this.page.say(`${names[0]} to ${names[1]}: ${this.length(Math.hypot(east, north))} in the plan, ${this.length(Math.abs(east))} ${east < 0 ? 'west' : 'east'} and ${this.length(Math.abs(north))} ${north < 0 ? 'south' : 'north'}${Math.abs(up) > 0.005 ? `, ${this.length(Math.abs(up))} ${up < 0 ? 'down' : 'up'}, ${this.length(Math.hypot(east, north, up))} in all` : ''}.`, 30000);
    this.first = null;
    this.overlay(); this.panel();
  }

  async takeAway() {
    const inlets = this.taken.filter(one => one.kind === 'inlet').map(one => one.id);
    if (!inlets.length) { this.page.say('Inlets are taken away with their drops: take one first.'); return; }
    await this.act({what: 'take away', inlets}, () => `${inlets.join(', ')} taken away. Back undoes that.`);
  }

  copy(by) {
    const inlets = this.taken.filter(one => one.kind === 'inlet').map(one => one.id);
    if (!inlets.length) { this.page.say('Inlets are copied with their drops: take one first.'); return; }
    return this.act({what: 'copy', inlets, ...by}, ids => `${ids.join(', ')} laid.`);
  }

  // ---------------------------------------------------------------- what the hand shows

  panel() { this.page.panel(this); this.cross.show(); }

  overlay() {
    const svg = this.drawing.svg;
    svg?.querySelector('.hand')?.remove();
    if (!svg || !this.places || this.mode === 'look') return;
    const layer = document.createElementNS(SVG, 'g');
    layer.setAttribute('class', 'hand');
    const shape = (name, attributes, words) => {
      const made = document.createElementNS(SVG, name);
      for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
      if (words) made.textContent = words;
      layer.append(made);
    };
    const p = this.pixel;
    if (['move', 'tube', 'machine'].includes(this.mode)) {
      for (const place of this.places.places) {
        if (this.mode !== 'move' && place.kind === 'corner') continue;
        const [x, y] = this.onSheet(place);
        const r = (place.kind === 'corner' ? 2.5 : 3.5) * p;
        shape('rect', {x: x - r, y: y - r, width: 2 * r, height: 2 * r, class: this.taken.includes(place) ? 'grip taken' : 'grip', 'stroke-width': p});
      }
    }
    if (this.drag?.moved) {
      const {dx, dy, dz} = this.drag.by;
      for (const place of this.taken) {
        const [x, y] = this.onSheet(place);
        const [tx, ty] = this.onSheet({x: place.x + dx, y: place.y + dy, z: place.z + dz});
        shape('path', {d: `M${x} ${y}L${tx} ${ty}`, class: 'guide', 'stroke-width': p});
        shape('circle', {cx: tx, cy: ty, r: 6 * p, class: 'guide', 'stroke-width': 1.5 * p});
      }
      const [tx, ty] = this.onSheet({x: this.drag.place.x + dx, y: this.drag.place.y + dy, z: this.drag.place.z + dz});
      const words = this.flat ? `${this.length(dx)} east, ${this.length(dy)} north` : `${this.length(dz)} up`;
      shape('text', {x: tx + 12 * p, y: ty - 10 * p, 'font-size': 12 * p, class: 'words'}, words);
    }
    if (this.box) {
      const {from, to} = this.box;
      shape('rect', {x: Math.min(from[0], to[0]), y: Math.min(from[1], to[1]), width: Math.abs(to[0] - from[0]), height: Math.abs(to[1] - from[1]), class: 'guide', 'stroke-width': p});
    }
    if (this.from || this.mode === 'wall' && this.corners.length) {
      const line = (this.from ? [this.from, ...this.corners] : this.corners).map(one => this.onSheet(one));
      if (this.at) line.push(this.at);
      shape('path', {d: `M${line.map(one => one.join(' ')).join('L')}`, class: 'guide', 'stroke-width': 2 * p});
    }
    if (this.first) {
      const to = this.at ?? this.first;
      shape('path', {d: `M${this.first.join(' ')}L${to.join(' ')}`, class: 'guide', 'stroke-width': 2 * p});
      shape('text', {x: to[0] + 12 * p, y: to[1] - 10 * p, 'font-size': 12 * p, class: 'words'}, this.length(Math.hypot(to[0] - this.first[0], to[1] - this.first[1]) / this.drawing.sheet.scale));
    }
    if (this.lays) this.cross.draw(shape, p);
    svg.append(layer);
  }
}

// A place in words, and as which piece of the plant it is shown.
export const named = place => place.kind === 'corner' ? `corner ${place.corner + 1} of ${place.id}` : place.kind === 'panel' ? 'panel' : `${place.kind === 'station' ? 'receiver' : place.kind} ${place.id}`;
export const shownAs = place => place.kind === 'corner' ? 'run' : place.kind;

