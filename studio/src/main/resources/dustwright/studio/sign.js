// The page one signs in at.
import {change} from './server.js';

const at = id => document.getElementById(id);

at('sign').addEventListener('submit', async event => {
  event.preventDefault();
  at('why').textContent = '';
  try {
    const result = await change('/api/session', {name: at('who').value, password: at('word').value});
    if (result.ok) { location.replace('/'); return; }
    at('why').textContent = result.content.why;
  } catch {
    at('why').textContent = 'The studio is not answering. Try again in a moment.';
  }
  at('word').value = '';
  at('word').focus();
});
