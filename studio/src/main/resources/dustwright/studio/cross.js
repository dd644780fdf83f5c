// Without a pointer: a cross that arrows walk over the plan, or that typed distances set; Enter acts where it stands, as a click there would.
export class Cross {
  constructor(hand, form, say) {
    this.hand = hand;
    this.form = form;
    this.say = say;
    this.at = null;
    this.fields = [...form.querySelectorAll('input')];
    form.addEventListener('submit', event => { event.preventDefault(); this.typed(); });
  }

  get walks() { return this.hand.lays && this.hand.flat && !!this.hand.places && this.hand.ready; }

  show() {
    this.form.hidden = !this.walks;
    if (this.form.hidden) return;
    const metres = this.at && [this.at.x, this.at.y];
    this.fields.forEach((field, n) => { if (field !== document.activeElement) field.value = metres ? this.hand.length(metres[n]) : ''; });
  }

  // True where the arrow was for the cross.
  step([dx, dy], fine) {
    if (!this.walks) return false;
    const by = this.hand.stride(fine);
    const {x, y} = this.at ?? this.hand.begins();
    this.to(x + dx * by, y - dy * by);
    return true;
  }

  to(x, y) {
    this.at = {x, y};
    const under = this.hand.under(this.sheet);
    this.hand.at = this.sheet;
    this.hand.inSight(this.sheet);
    this.hand.overlay();
    this.show();
    this.say(`Cross at ${this.hand.length(x)} east, ${this.hand.length(y)} north${under ? `, on ${under}` : ''}. Enter takes the point.`, 0);
  }

  get sheet() { return this.hand.onSheet({...this.at, z: this.hand.level}); }

  typed() {
    const [x, y] = this.fields.map(field => this.hand.typed(field.value));
    if (x === null || y === null) { this.say(`Where? ${this.hand.why}`); return; }
    this.to(x, y);
    this.enter();
  }

  // True where Enter was for the cross.
  enter() {
    if (!this.at) return false;
    this.hand.put(this.sheet, this.hand.run(this.sheet), true);
    this.show();
    return true;
  }

  draw(shape, p) {
    if (!this.at) return;
    const [x, y] = this.sheet;
    shape('path', {class: 'cross', 'stroke-width': 1.5 * p, d: `M${x - 16 * p} ${y}h${12 * p}M${x + 4 * p} ${y}h${12 * p}M${x} ${y - 16 * p}v${12 * p}M${x} ${y + 4 * p}v${12 * p}`});
  }
}
