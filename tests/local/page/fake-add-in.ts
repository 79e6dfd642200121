import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** Stands for the built add-in in the page: a sheet function, a menu, a trigger, sidebar calls. */
const CODE = `
/**
 * Doubles every number.
 * @param {any} values What to double.
 * @customfunction
 */
function DOUBLED(values) {
  if (!Array.isArray(values)) {
    if (values === 'stop') throw new Error('DOUBLED: stop is not a number');
    return values instanceof Date ? new Date(values.getTime() + 86400000) : values * 2;
  }
  return values.map(function (row) { return row.map(function (one) { return one === '' ? '' : one * 2; }); });
}
var loads = 0;
function onOpen() {
  SpreadsheetApp.getUi().createMenu('Trial').addItem('Open sidebar', 'openSidebar').addSeparator()
    .addItem('Say hello', 'sayHello').addItem('Break', 'breaks').addToUi();
}
function onEdit(e) {
  var log = SpreadsheetApp.getActive().getSheetByName('Log') || SpreadsheetApp.getActive().insertSheet('Log', 1);
  log.appendRow([e.range.getA1Notation(), "'" + e.value, "'" + e.oldValue]);
  e.range.getSheet().activate();
}
function openSidebar() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Sidebar').setTitle('Trial side'));
}
function sayHello() {
  var ui = SpreadsheetApp.getUi();
  var answer = ui.alert('Greet?', 'A message will show.', ui.ButtonSet.YES_NO);
  if (answer === ui.Button.YES) SpreadsheetApp.getActive().toast('Hello there', 'Trial', -1);
}
function breaks() { throw new Error('It broke'); }
function countLoads() { return ++loads; }
function echo(value) { return value; }
function giveDay() { return { ok: true, day: [new Date(0)] }; }
function globals() { return [typeof setTimeout, typeof fetch, typeof URL, typeof parent, typeof Intl].join(); }
function failing() { throw new Error('failing on purpose'); }
function hidden_() { return 1; }
function writeAll(rows) {
  var lock = LockService.getDocumentLock();
  lock.waitLock(100);
  var sheet = SpreadsheetApp.getActive().insertSheet('Written');
  sheet.getRange(1, 1, rows.length, rows[0].length).setValues(rows);
  sheet.getRange(40, 3).activate();
  lock.releaseLock();
  return sheet.getLastRow();
}
`;

const SIDEBAR = `<!DOCTYPE html><html lang="en"><head><base target="_top"><title>not shown</title>
<style>body { font: 14px sans-serif; }</style></head><body><h1>Side</h1>
<form id="form"><label>Name <input name="bench" value="Bench 1"></label></form>
<ol id="log"></ol><script>
var log = function (text) { var li = document.createElement('li'); li.textContent = text; document.getElementById('log').append(li); };
var say = function (name) { return function (value, user) { log(name + ' ' + JSON.stringify(value) + (user === undefined ? '' : ' ' + user)); }; };
var run = google.script.run.withFailureHandler(function (e) { log('error ' + e.message); });
function runAll() {
  var value = run.withSuccessHandler(say('echo')).withUserObject('mine').echo({ a: [1, null, 'x'] });
  log('returns ' + value);
  run.withSuccessHandler(say('day')).giveDay();
  run.withSuccessHandler(say('globals')).globals();
  run.withSuccessHandler(say('form')).echo(document.getElementById('form'));
  run.failing();
  try { run.echo({ when: new Date() }); } catch (e) { log('throws ' + e.message); }
  log('private ' + typeof run.hidden_);
  run.withSuccessHandler(say('loads')).countLoads();
}
function reach() {
  try { log('parent ' + parent.document.title); } catch (e) { log('parent out of reach'); }
  fetch('/Code.js').then(function () { log('fetched'); }, function () { log('fetch refused'); });
  var image = new Image(); image.onerror = function () { log('image refused'); }; image.src = 'http://127.0.0.1:9/beacon.png';
}
function download() {
  var link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob(['BEGIN:VCALENDAR'], { type: 'text/calendar' }));
  link.download = 'due.ics'; link.click();
}
function callMany(n) {
  window.order = []; for (var i = 0; i < n; i++) run.withSuccessHandler(function (v) { window.order.push(v); }).echo(i);
}
log('ready');
</script></body></html>`;

const TABLE = `Batch,Grafted,Day\nB1,10,2026-03-14\nB2,20,2026-03-15\nB3,30,2026-03-16\n`;

/** Puts the fake add-in and a small table into a folder of its own. */
export function fakeAddIn() {
  const folder = mkdtempSync(path.join(tmpdir(), "local-page-"));
  const dist = path.join(folder, "dist");
  const table = path.join(folder, "trial.csv");
  mkdirSync(dist);
  writeFileSync(path.join(dist, "Code.js"), CODE);
  writeFileSync(path.join(dist, "Sidebar.html"), SIDEBAR);
  writeFileSync(table, TABLE);
  return { dist, table, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
