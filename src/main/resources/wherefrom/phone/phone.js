'use strict';
(() => {
  const $ = id => document.getElementById(id);
  const SECTIONS = ['out', 'join', 'work', 'pad', 'words', 'sheet', 'lost'];
  const WORKS = [
    ['take_apart', 'Take apart'],
    ['put_together', 'Put together'],
    ['follow_the_list', 'Follow the list'],
    ['where_does_this_go', 'Where does this go?'],
  ];
  const MOST_BYTES = 25000000;
  const POLL_MS = 4000;
  const AGAIN_MS = 2000;
  const HOLD_MS = 1500;
  const REPEAT_MS = 3000;

  let key = '';
  let view = null;
  let shown = '';
  let pending = null;   // what was pressed and is not known to be done
  let lost = false;
  let sending = false;
  let timer = 0;
  let touched = 0;

  // --- screens -----------------------------------------------------------------------------

  function show(section) {
    SECTIONS.forEach(one => { $(one).hidden = one !== section; });
    window.scrollTo(0, 0);
  }

  function up() {
    return SECTIONS.find(one => !$(one).hidden);
  }

  function text(id, words) {
    $(id).textContent = words;
    $(id).hidden = words === '';
  }

  function notJoined(words) {
    view = null;
    pending = null;
    hush();
    text('out-words', words);
    show('out');
  }

  // --- sound -------------------------------------------------------------------------------

  const TONES = { RIGHT: [[1760, 130]], STOP: [[660, 220], [0, 60], [520, 320]], ASK: [[1100, 260]] };
  const SOUNDING = ['work', 'lost'];
  const SHAKES = { RIGHT: [60], STOP: [300, 100, 300], ASK: [120] };
  let audio = null;
  let again = 0;

  /** A phone lets a page sound only once it was touched. */
  function wake() {
    try {
      audio = audio || new (window.AudioContext || window.webkitAudioContext)();
      if (audio.state === 'suspended') {
        audio.resume();
      }
    } catch (none) {
      audio = null;
    }
  }

  function tone(hertz, from, ms) {
    const wave = audio.createOscillator();
    const loud = audio.createGain();
    wave.frequency.value = hertz;
    wave.connect(loud);
    loud.connect(audio.destination);
    loud.gain.setValueAtTime(0, from);
    loud.gain.linearRampToValueAtTime(0.9, from + 0.012);
    loud.gain.setValueAtTime(0.9, from + ms / 1000 - 0.04);
    loud.gain.linearRampToValueAtTime(0, from + ms / 1000);
    wave.start(from);
    wave.stop(from + ms / 1000);
  }

  function play(cue) {
    if (navigator.vibrate) {
      navigator.vibrate(SHAKES[cue]);
    }
    if (audio && audio.state === 'running') {
      let at = audio.currentTime + 0.02;
      TONES[cue].forEach(([hertz, ms]) => {
        if (hertz > 0) {
          tone(hertz, at, ms);
        }
        at += ms / 1000;
      });
    }
  }

  function hush() {
    clearInterval(again);
    again = 0;
  }

  function sound(cue) {
    hush();
    if (cue) {
      play(cue);
    }
    if (cue === 'STOP') {
      again = setInterval(() => { if (!document.hidden && SOUNDING.includes(up())) { play('STOP'); } }, REPEAT_MS);
    }
  }

  // --- what stands -------------------------------------------------------------------------

  const PANELS = { RIGHT: 'right', STOP: 'stop', ASK: 'ask' };

  function draw(next) {
    view = next;
    shown = JSON.stringify(next);
    paint(next);
  }

  /** Whether a stop stands: whatever fails, is sent or is said meanwhile, it stays to be seen. */
  function stopped() {
    return view !== null && view.cue === 'STOP';
  }

  function paint(next) {
    $('panel').className = 'panel ' + (PANELS[next.cue] || 'plain-panel');
    text('headline', headline(next));
    text('place', next.place);
    $('place').className = next.place.length > 7 ? 'long' : '';
    text('what', next.what);
    text('small', asks(next) ? (next.headline + ' ' + next.small).trim() : next.small);
    text('next', next.next);
    facts(next.facts);
    const tag = next.tag[0];
    const photo = tag && tag.deed === 'photograph';
    $('tag').hidden = !photo;
    $('deed').hidden = !tag || photo;
    if (tag) {
      text(photo ? 'tag-words' : 'deed-words', tag.words);
      text(photo ? 'tag-more' : 'deed-more', tag.more);
    }
    $('choices').replaceChildren(...next.choices.map(keyOf));
    // One of them leads back.
    $('foot').hidden = next.choices.length > 0;
  }

  /** Whether something is asked under a stop; its facts are not beside it then. */
  function asks(next) {
    return next.cue === 'STOP' && next.choices.length > 0 && next.facts.length === 0;
  }

  /** As the window writes it: a verdict in capitals, a stop as STOP. */
  function headline(next) {
    if (next.cue === 'STOP' && next.facts.length > 0) {
      return 'STOP';
    }
    const work = WORKS.find(([key]) => key === next.work);
    const said = next.headline || (work ? work[1] : '');
    if (next.cue === 'STOP') {
      return asks(next) ? 'STOP' : 'STOP: ' + said.toUpperCase();
    }
    return next.cue && !next.choices.length ? said.toUpperCase() : said;
  }

  function facts(all) {
    const rows = [];
    all.forEach(fact => {
      const label = document.createElement('dt');
      label.textContent = fact.label ? fact.label + ':' : '';
      const value = document.createElement('dd');
      value.textContent = fact.value;
      rows.push(label, value);
    });
    $('facts').replaceChildren(...rows);
    $('facts').hidden = all.length === 0;
  }

  function keyOf(one) {
    const button = document.createElement('button');
    button.className = 'key' + (one.held ? ' held' : '');
    button.append(one.words);
    if (one.more) {
      const more = document.createElement('span');
      more.className = 'more';
      more.textContent = one.more;
      button.append(more);
    }
    press(button, () => deed(one), one.held);
    return button;
  }

  /** One touch is one deed: a double tap counts once, and what has just come up is not meant. */
  function press(target, act, held) {
    if (held) {
      hold(target, act);
      return;
    }
    target.addEventListener('click', event => {
      event.preventDefault();
      const now = Date.now();
      if (now - touched < 400) {
        return;
      }
      touched = now;
      wake();
      act();
    });
  }

  function hold(target, act) {
    const bar = document.createElement('span');
    bar.className = 'bar-held';
    target.append(bar);
    let waits = 0;
    const letGo = () => {
      clearTimeout(waits);
      target.classList.remove('holding');
    };
    target.addEventListener('pointerdown', () => {
      wake();
      target.classList.add('holding');
      waits = setTimeout(() => { letGo(); act(); }, HOLD_MS);
    });
    ['pointerup', 'pointerleave', 'pointercancel'].forEach(end => target.addEventListener(end, letGo));
    target.addEventListener('contextmenu', event => event.preventDefault());
  }

  // --- talk --------------------------------------------------------------------------------

  function id() {
    const chance = new Uint8Array(16);
    crypto.getRandomValues(chance);
    return Array.from(chance, one => one.toString(16).padStart(2, '0')).join('');
  }

  async function ask(path, options, ms) {
    const stop = new AbortController();
    const late = setTimeout(() => stop.abort(), ms);
    try {
      const answer = await fetch(path, Object.assign({ signal: stop.signal, cache: 'no-store' }, options));
      return { status: answer.status, body: await answer.json() };
    } finally {
      clearTimeout(late);
    }
  }

  function words(path, body) {
    return ask(path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(body),
    }, 25000);
  }

  function deed(one) {
    if (one.deed === 'type') {
      pad();
    } else if (one.deed === 'reason' && one.with === '') {
      $('words-text').value = '';
      show('words');
    } else {
      begin({ words: one.words, send: act => words('act', { id: act, deed: one.deed, with: one.with }) });
    }
  }

  function photo(file, keep, said) {
    if (!file) {
      return;
    }
    if (file.size > MOST_BYTES) {
      failed('More than 25 MB is too much. Take a smaller picture.');
      return;
    }
    const type = file.type === 'image/png' ? 'image/png' : 'image/jpeg';
    begin({
      words: said,
      send: act => {
        const headers = { 'Content-Type': type, 'X-Act': act };
        if (keep) {
          headers['X-Keep'] = keep;
        }
        return ask('photo', { method: 'POST', headers, body: file }, 70000);
      },
    });
  }

  /** One thing at a time: nothing else is begun before this is known to be done, or dropped. */
  function begin(one) {
    if (pending) {
      return;
    }
    pending = Object.assign({ id: id() }, one);
    hush();
    document.body.classList.add('busy');
    go();
  }

  async function go() {
    if (!pending || sending) {
      return;
    }
    sending = true;
    const mine = pending;
    const slow = setTimeout(() => { if (pending === mine) { waiting(); } }, 700);
    try {
      const answer = await mine.send(mine.id);
      if (pending === mine) {
        answered(answer);
      }
    } catch (gone) {
      if (pending === mine) {
        cut();
      }
    } finally {
      clearTimeout(slow);
      sending = false;
      if (pending && pending !== mine) {
        go();
      }
    }
  }

  /** What was pressed stands under "Not done yet", a stop beside it. */
  function notYet(why, canDrop) {
    text('lost-title', 'Not done yet');
    text('lost-words', pending.words);
    text('lost-why', why);
    $('lost-stop').hidden = !stopped();
    $('lost-drop').hidden = !canDrop;
    show('lost');
  }

  function waiting() {
    if (!lost && !pending.held) {
      notYet('It is being sent.', false);
    }
  }

  function answered(answer) {
    if (answer.status === 200) {
      settle();
      draw(answer.body);
      show('work');
      sound(answer.body.cue);
    } else if (answer.status === 401) {
      settle();
      notJoined(answer.body.said);
    } else if (answer.status === 429 || answer.status === 503) {
      // It may take long, as where the shared server is away: why is said, and it can be dropped.
      pending.held = true;
      notYet(answer.body.said + ' It is sent again by itself.', true);
      setTimeout(go, AGAIN_MS);
    } else {
      settle();
      failed(answer.body.said || 'That did not work. Nothing was done.');
    }
  }

  function settle() {
    pending = null;
    lost = false;
    document.body.classList.remove('busy');
  }

  /**
   * Said in the place of the answer: nothing was done. A stop, and what there is to choose, stands
   * on with it; all else might be taken for the answer.
   */
  function failed(said) {
    paint(Object.assign({}, view, stopped() || view.choices.length
      ? { small: said.includes('Nothing was done.') ? said : 'Not done. ' + said }
      : { cue: 'ASK', headline: 'Not done', place: '', what: '', facts: [], small: said, next: '' }));
    show('work');
    sound(stopped() ? 'STOP' : 'ASK');
  }

  /** What stands is shown again, and a stop is heard again. */
  function stands() {
    paint(view);
    show('work');
    sound(stopped() ? 'STOP' : '');
  }

  /** No connection: what was pressed is not shown as done, and is sent again when it is back. */
  function cut() {
    lost = true;
    if (!stopped()) {
      hush();
    } else if (!again) {
      sound('STOP');
    }
    if (pending) {
      notYet('No connection. It is sent again by itself.', true);
    } else {
      text('lost-title', 'No connection');
      text('lost-words', '');
      text('lost-why', 'No connection. Go on when it is back.');
      $('lost-stop').hidden = !stopped();
      $('lost-drop').hidden = true;
      show('lost');
    }
    next(AGAIN_MS);
  }

  function next(ms) {
    clearTimeout(timer);
    timer = setTimeout(look, ms);
  }

  /** Looks what stands: by it the page learns that the connection is back, or lost. */
  async function look() {
    if (sending || (!view && !lost) || (pending && !lost)) {
      next(POLL_MS);
      return;
    }
    try {
      const answer = await ask('state', {}, 8000);
      back(answer);
    } catch (gone) {
      cut();
    }
    next(lost ? AGAIN_MS : POLL_MS);
  }

  function back(answer) {
    if (answer.status === 401) {
      notJoined(answer.body.said);
      return;
    }
    if (answer.status !== 200) {
      return;
    }
    if (lost) {
      lost = false;
      if (pending) {
        go();
        return;
      }
      draw(answer.body);
      stands();
    } else if (!pending && JSON.stringify(answer.body) !== shown) {
      const stop = answer.body.cue === 'STOP' && !stopped();
      draw(answer.body);
      if (stop) {
        sound('STOP');
      } else if (answer.body.cue !== 'STOP') {
        hush();
      }
    }
  }

  // --- typing ------------------------------------------------------------------------------

  let typed = '';

  function pad() {
    typed = '';
    told();
    show('pad');
  }

  function told() {
    $('digits').textContent = typed.length > 6 ? typed : typed.replace(/^(\d{4})(\d)/, '$1 $2');
  }

  function figures() {
    const all = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '', '0', '⌫'].map(figure => {
      const button = document.createElement(figure === '' ? 'span' : 'button');
      if (figure !== '') {
        button.className = 'key';
        button.textContent = figure;
        if (figure === '⌫') {
          button.setAttribute('aria-label', 'Erase');
        }
        button.addEventListener('click', () => {
          wake();
          typed = figure === '⌫' ? typed.slice(0, -1) : (typed + figure).slice(0, 16);
          told();
        });
      }
      return button;
    });
    $('figures').replaceChildren(...all);
  }

  function typedCode() {
    if (typed.length === 6 || typed.length === 16) {
      const code = typed;
      begin({ words: 'Code ' + code, send: act => words('act', { id: act, deed: 'code', with: code }) });
    }
  }

  // --- more --------------------------------------------------------------------------------

  function sheet() {
    const works = WORKS.filter(([key]) => key !== view.work)
      .map(([key, said]) => ({ deed: 'work', with: key, words: said, more: '', held: false }));
    $('sheet-list').replaceChildren(...view.keys.concat(works).map(keyOf));
    $('keep-key').hidden = view.subject === '';
    $('keep-words').textContent = 'Photograph this: ' + view.subjectWords;
    show('sheet');
  }

  // --- joining -----------------------------------------------------------------------------

  async function hello() {
    try {
      const answer = await words('hello', { key });
      if (answer.status === 200) {
        text('join-job', answer.body.job);
        text('join-number', answer.body.number);
        show('join');
      } else {
        notJoined(answer.body.said);
      }
    } catch (gone) {
      notJoined('The big screen is not reached. Is this phone on its network?');
    }
  }

  async function join() {
    try {
      const answer = await words('join', { key, name: $('join-name').value });
      if (answer.status === 429 || answer.status === 503) {
        // The key is as good as before.
        text('join-said', answer.body.said);
        return;
      }
      if (answer.status !== 200) {
        notJoined(answer.body.said);
        return;
      }
      key = '';
    } catch (gone) {
      text('join-said', 'The big screen is not reached. Press Join again.');
    }
    await state();
  }

  /** The key is used up by the first answer: where that was lost, the cookie tells. */
  async function state() {
    try {
      const answer = await ask('state', {}, 8000);
      if (answer.status === 200) {
        draw(answer.body);
        stands();
        next(POLL_MS);
        return true;
      }
    } catch (gone) {
      // Said below.
    }
    return false;
  }

  async function start() {
    key = location.hash.slice(1);
    history.replaceState(null, '', location.pathname);
    if (await state()) {
      return;
    }
    if (key) {
      await hello();
    } else {
      notJoined('Photograph the code on the big screen with the phone’s camera.');
    }
  }

  press($('join-go'), join);
  press($('more'), sheet);
  press($('undo'), () => deed({ deed: 'undo', with: '', words: 'UNDO' }));
  press($('type'), pad);
  press($('pad-go'), typedCode);
  press($('pad-back'), () => show('work'));
  press($('sheet-back'), () => show('work'));
  press($('words-back'), () => show('work'));
  press($('words-go'), () => {
    const why = $('words-text').value.trim();
    if (why) {
      deed({ deed: 'reason', with: why, words: why });
    }
  });
  hold($('deed'), () => deed(view.tag[0]));
  press($('lost-drop'), () => {
    settle();
    stands();
    next(0);
  });
  $('scan').addEventListener('click', wake);
  $('scan').addEventListener('change', event => {
    const file = event.target.files[0];
    photo(file, '', 'Photograph of a tag');
    event.target.value = '';
  });
  $('keep').addEventListener('change', event => {
    photo(event.target.files[0], view.subject, 'Photograph of the ' + view.subjectWords);
    event.target.value = '';
  });
  document.addEventListener('visibilitychange', () => { if (!document.hidden && view) { next(0); } });
  figures();
  start();
})();
