// client.mjs SERVER FILE LINE:COLUMN... - opens a file in a language server of YAML over its standard
// streams, as an editor does, and prints what it marks ("mark LINE MESSAGE") and what it offers at
// each place ("offer LINE:COLUMN LABEL"). Lines and columns count from 1.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const [server, file, ...places] = process.argv.slice(2);
const child = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
const waiting = new Map();
let marked;
const marks = new Promise((done) => { marked = done; });

function send(message) {
  const text = JSON.stringify({ jsonrpc: '2.0', ...message });
  child.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
}

let last = 0;
function ask(method, params) {
  last += 1;
  send({ id: last, method, params });
  return new Promise((done) => waiting.set(last, done));
}

function take(message) {
  if (message.method && message.id !== undefined) {
    const settings = message.params && message.params.items ? message.params.items.map(() => null) : null;
    send({ id: message.id, result: settings });
  } else if (message.id !== undefined) {
    waiting.get(message.id)(message.result);
  } else if (message.method === 'textDocument/publishDiagnostics') {
    marked(message.params.diagnostics);
  }
}

let bytes = Buffer.alloc(0);
child.stdout.on('data', (more) => {
  bytes = Buffer.concat([bytes, more]);
  for (;;) {
    const head = bytes.indexOf('\r\n\r\n');
    if (head < 0) return;
    const start = head + 4;
    const end = start + Number(/Content-Length: (\d+)/i.exec(bytes.subarray(0, head).toString())[1]);
    if (bytes.length < end) return;
    const message = JSON.parse(bytes.subarray(start, end).toString());
    bytes = bytes.subarray(end);
    take(message);
  }
});
child.on('exit', () => { console.log('the server left'); process.exit(1); });
setTimeout(() => { console.log('no answer in time'); process.exit(1); }, 50000);

const uri = pathToFileURL(resolve(file)).href;
await ask('initialize', { processId: process.pid, rootUri: null, capabilities: {} });
send({ method: 'initialized', params: {} });
send({
  method: 'workspace/didChangeConfiguration',
  params: { settings: { yaml: { validate: true, completion: true, schemaStore: { enable: false } } } },
});
send({
  method: 'textDocument/didOpen',
  params: { textDocument: { uri, languageId: 'yaml', version: 1, text: readFileSync(file, 'utf8') } },
});
for (const mark of await marks) console.log(`mark ${mark.range.start.line + 1} ${mark.message}`);
for (const place of places) {
  const [line, column] = place.split(':').map(Number);
  const found = await ask('textDocument/completion', {
    textDocument: { uri },
    position: { line: line - 1, character: column - 1 },
  });
  for (const item of (found && found.items) || found || []) console.log(`offer ${place} ${item.label}`);
}
process.exit(0);
