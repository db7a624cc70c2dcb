// Tables of class "sortable": sorted by a button in each column's head, narrowed by a text field.
// Without this script they are plain tables. The conventions for templates:
//   <table class="sortable" id="...">   the id keeps order and words when a list is swapped
//   <th data-sort="none">               this column is not sorted
//   <td data-sort="2026-08-01">         sorts by this, not by its text (dates as year-month-day)
//   <table data-tools="id">             where the field goes, when not right before the table: for
//                                       a list that is swapped while somebody writes
//   <tr class="total">                  stays last and is not counted
(() => {
  'use strict';
  const remembered = new Map();
  const words = new Intl.Collator(document.documentElement.lang || 'en', { numeric: true });
  let unnamed = 0;

  const rowsOf = (table) => [...table.tBodies].flatMap((body) => [...body.rows])
    .filter((row) => !row.classList.contains('total'));
  const headsOf = (table) => table.tHead ? [...table.tHead.rows[table.tHead.rows.length - 1].cells] : [];
  const nameOf = (head) => head.textContent.trim();
  const sorts = (head) => head.dataset.sort !== 'none' && nameOf(head) !== '';

  function valueOf(row, column) {
    const cell = row.cells[column];
    if (!cell) return '';
    return (cell.dataset.sort ?? cell.textContent).trim();
  }

  function compare(a, b) {
    if (a === b) return 0;
    const x = Number(a), y = Number(b);
    return Number.isNaN(x) || Number.isNaN(y) ? words.compare(a, b) : x - y;
  }

  // What is empty stays at the end, whichever way the rest goes.
  function inOrder(rows, column, down) {
    const keyed = rows.map((row, at) => ({ row, at, key: valueOf(row, column) }));
    keyed.sort((a, b) => {
      if ((a.key === '') !== (b.key === '')) return a.key === '' ? 1 : -1;
      return (down ? compare(b.key, a.key) : compare(a.key, b.key)) || a.at - b.at;
    });
    return keyed.map((k) => k.row);
  }

  function arrange(table, state) {
    headsOf(table).forEach((head, column) => {
      if (!sorts(head)) return;
      if (column === state.column) head.setAttribute('aria-sort', state.down ? 'descending' : 'ascending');
      else head.removeAttribute('aria-sort');
    });
    if (state.column >= 0) reorder(table, state);
    narrow(table, state);
  }

  function reorder(table, state) {
    const before = rowsOf(table);
    const after = inOrder(before, state.column, state.down);
    if (after.every((row, i) => row === before[i])) return;
    const focused = table.contains(document.activeElement) ? document.activeElement : null;
    const body = table.tBodies[0];
    const totals = [...body.rows].filter((row) => row.classList.contains('total'));
    body.append(...after, ...totals);
    if (focused && document.activeElement !== focused) focused.focus({ preventScroll: true });
  }

  function narrow(table, state) {
    const wanted = state.text.toLowerCase().split(/\s+/).filter(Boolean);
    const rows = rowsOf(table);
    let shown = 0;
    for (const row of rows) {
      const text = row.textContent.toLowerCase();
      row.hidden = !wanted.every((word) => text.includes(word));
      if (!row.hidden) shown++;
    }
    const count = wanted.length === 0 ? '' : shown + ' of ' + rows.length + ' rows';
    if (state.count && state.count.textContent !== count) state.count.textContent = count;
    if (state.tools) state.tools.hidden = rows.length < 6 && wanted.length === 0;
  }

  function element(tag, attributes, ...children) {
    const made = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
    made.append(...children);
    return made;
  }

  function makeTools(table, state, key) {
    const field = element('input', { type: 'search', id: key + '-words', autocomplete: 'off', value: state.text });
    field.addEventListener('input', () => {
      state.text = field.value;
      narrow(state.table, state);
    });
    const order = element('select', { id: key + '-order' }, element('option', { value: '' }, 'as listed'));
    headsOf(table).forEach((head, column) => {
      if (!sorts(head)) return;
      order.append(element('option', { value: column + ' up' }, nameOf(head) + ', rising'));
      order.append(element('option', { value: column + ' down' }, nameOf(head) + ', falling'));
    });
    order.addEventListener('change', () => {
      if (order.value === '') return;
      const [column, way] = order.value.split(' ');
      sortBy(state, Number(column), way === 'down');
    });
    state.order = order;
    state.count = element('p', { class: 'meta', role: 'status', 'aria-live': 'polite' });
    state.tools = element('div', { class: 'table-tools' },
      element('div', {}, element('label', { for: field.id }, 'Show only rows with'), field),
      element('div', { class: 'order' }, element('label', { for: order.id }, 'Sort by'), order),
      state.count);
    const home = table.dataset.tools && document.getElementById(table.dataset.tools);
    if (home) home.replaceChildren(state.tools);
    else (table.closest('.scroll') ?? table).before(state.tools);
  }

  function sortBy(state, column, down) {
    state.column = column;
    state.down = down;
    state.order.value = column + (down ? ' down' : ' up');
    arrange(state.table, state);
  }

  function addButtons(table, state) {
    headsOf(table).forEach((head, column) => {
      if (!sorts(head)) return;
      const button = element('button', { type: 'button', class: 'sort' }, ...head.childNodes);
      button.addEventListener('click', () => sortBy(state, column, state.column === column && !state.down));
      head.append(button);
    });
  }

  function enhance(table) {
    if (table.dataset.ready || !table.tHead || table.tBodies.length === 0) return;
    table.dataset.ready = 'yes';
    const key = table.id || 'table-' + ++unnamed;
    const state = remembered.get(key) ?? { column: -1, down: false, text: '' };
    remembered.set(key, state);
    state.table = table;
    if (!state.tools || !state.tools.isConnected) makeTools(table, state, key);
    addButtons(table, state);
    arrange(table, state);
  }

  const enhanceAll = () => document.querySelectorAll('table.sortable').forEach(enhance);
  enhanceAll();
  // A list that is swapped comes as a plain table again: before it is painted, it gets its order back.
  new MutationObserver(enhanceAll).observe(document.body, { childList: true, subtree: true });
})();
