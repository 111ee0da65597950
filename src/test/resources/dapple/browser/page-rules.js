// Returns in words what a page breaks of the rules that hold for every page.
const broken = [];
const rule = (kept, words) => { if (!kept) broken.push(words); };
const page = document.documentElement;

rule(page.lang === 'en', `html lang is "${page.lang}"`);
rule(['day', 'night'].includes(page.dataset.scheme), `data-scheme is "${page.dataset.scheme}"`);
rule(document.querySelectorAll('h1').length === 1, `${document.querySelectorAll('h1').length} h1 on the page`);
rule(document.querySelectorAll('main#main').length === 1, 'no main, or more than one');
rule(!page.outerHTML.includes('??'), 'a message is missing: ??');
rule(!/\{\d/.test(document.body.innerText), 'a message lacks its argument');
rule(page.scrollWidth <= page.clientWidth, `the page is ${page.scrollWidth} px wide on a screen of ${page.clientWidth}`);

const TOUCH = 48;
const LEAST = 24;
const pressable = 'a[href], button, input:not([type=hidden]), select, textarea, summary';
for (const each of document.querySelectorAll(pressable)) {
  if (!each.checkVisibility({ visibilityProperty: true })) continue;
  // A label is pressed as well as its box; a link within a sentence is as high as the sentence.
  const { width, height } = (each.closest('label') ?? each).getBoundingClientRect();
  const inline = each.matches('a') && getComputedStyle(each).display === 'inline';
  const inText = inline && each.parentElement.textContent.trim() !== each.textContent.trim();
  const least = each.closest('td, th') ? LEAST : TOUCH;
  rule(inText || (height >= least && width >= LEAST),
    `too small to press, ${Math.round(width)} × ${height}: ${each.outerHTML.slice(0, 120)}`);
}
return broken;
