// A slow connection to a service, which breaks once: node slow.mjs SERVICE PORT BYTES-A-SECOND BYTES-BEFORE-THE-BREAK
import { connect, createServer } from 'node:net';
import { Transform } from 'node:stream';

const { hostname, port } = new URL(process.argv[2]);
const [own, rate, before] = process.argv.slice(3).map(Number);
let passed = 0;
let broken = false;

const slowed = () => new Transform({
  highWaterMark: 16_384,
  transform(bytes, encoding, done) {
    setTimeout(() => done(null, bytes), (bytes.length * 1000) / rate);
  },
});

createServer((caller) => {
  const service = connect(Number(port), hostname);
  const end = () => [caller, service].forEach((socket) => socket.destroy());
  [caller, service].forEach((socket) => socket.on('error', end));
  caller.on('close', end); // of the other the rest is still on its way
  caller.pipe(slowed()).pipe(service);
  service.pipe(slowed()).on('data', (bytes) => {
    passed += bytes.length;
    if (!broken && passed > before) {
      broken = true;
      console.log('broken');
      end();
    }
  }).pipe(caller);
}).listen(own, '127.0.0.1');
