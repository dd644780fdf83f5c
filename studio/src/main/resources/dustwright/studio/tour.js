// A tour through the studio: each stop says one thing to do and goes on when it is done, or when one goes on oneself.
import {element} from './element.js';

const FINGERS = matchMedia('(pointer: coarse)').matches;
const PRESS = FINGERS ? 'Tap' : 'Click';

const at = id => document.getElementById(id);

export class Tour {
  // What the page knows: state of the plan; on a phone the buttons are folded under one.
  constructor(state, tools) {
    this.state = state;
    this.tools = tools;
    this.stops = [
      {say: `Each ring is an inlet, a filled one is open. ${PRESS} a ring that is not filled${FINGERS ? '' : ', or choose it with the arrows and press o'}.`, show: '#drawing', done: () => state.open.join() !== this.begun.open},
      {say: `Tubing is drawn by its margin to the nearest limit: the heavier and more broken, the worse. What does not hold stands here, worst first. ${PRESS} the first one.`, show: '#findings', done: () => !at('steps').hidden},
      {say: `Every figure opens down to its equation and source. ${FINGERS ? 'Back to the drawing' : 'Esc'} closes it again.`, show: '#steps', done: () => this.begun.opened && at('steps').hidden},
      {say: 'Whichever inlets are open: these are the worst sets by number of users, first of those asked, then of all. Choose a number.', show: '.users', done: () => state.users !== null},
      {say: `${PRESS} a tube, then type another size beside it and press Enter: everything is solved anew. A size the plant file does not name is refused in words.`, show: '#drawing', done: () => state.plant.step > this.begun.step},
      {say: 'Back undoes it, without limit, also tomorrow. Every step is on the disk before the page says kept.', show: '#back', folded: true, done: () => this.begun.edited && state.plant.step <= this.begun.step},
      {say: 'Move, New inlet and New tube draw. Nothing but the words that say it changes in the plant file.', show: '[aria-label=Hand]', folded: true},
      {say: 'Machines has what each piece of equipment comes to: curve and operating point, the bag over a week, every figure with its way down to the source.', show: '[data-place=machines]', done: () => state.place === 'machines'},
      {say: 'On the panel the plant is rehearsed: press START, break something, take a drill.', show: '[data-place=panel]', done: () => state.place === 'panel'},
      {say: `Compare puts two designs side by side; Papers has the report and the revisions.${FINGERS ? '' : ' Keys lists what can be done without a mouse.'}`, show: '.places'},
    ];
    at('tournext').addEventListener('click', () => this.go(this.number + 1));
    at('tourend').addEventListener('click', () => this.end());
  }

  begin() {
    this.go(0);
    clearInterval(this.timer);
    this.timer = setInterval(() => this.look(), 400);
  }

  go(number) {
    this.number = number;
    document.querySelector('.toured')?.classList.remove('toured');
    const stop = this.stops[number];
    if (!stop) { this.end(); return; }
    this.begun = {open: this.state.open.join(), step: stop.show === '#back' ? this.begun.step : this.state.plant.step};
    this.seen();
    this.tools(!!stop.folded);
    at('tour').hidden = false;
    at('toursay').replaceChildren(element('small', {}, `Stop ${number + 1} of ${this.stops.length}`), element('p', {}, stop.say));
    at('tournext').textContent = number + 1 === this.stops.length ? 'Done' : stop.done ? 'Skip' : 'Go on';
    const shown = document.querySelector(stop.show);
    shown?.classList.add('toured');
    shown?.scrollIntoView({block: 'nearest'});
  }

  seen() {
    this.begun.opened ||= !at('steps').hidden;
    this.begun.edited ||= this.state.plant.step > this.begun.step;
  }

  look() {
    this.seen();
    if (this.stops[this.number]?.done?.()) this.go(this.number + 1);
  }

  end() {
    clearInterval(this.timer);
    document.querySelector('.toured')?.classList.remove('toured');
    at('tour').hidden = true;
    localStorage.setItem('toured', 'yes');
  }

  // By itself only on the demo plant, once.
  first(demo) {
    if (demo && !localStorage.getItem('toured')) this.begin();
  }
}
