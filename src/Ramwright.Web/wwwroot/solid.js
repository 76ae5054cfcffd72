// The deformed frame in three dimensions: turned by a finger or the keys, shaded by stress, read where it is touched.
const steps = ["#e3ebf0", "#cbdae4", "#b2c9d7", "#99b7ca", "#80a5bc", "#6793ae", "#4e81a0"], over = "#cf7a47", unknown = "#cfcdc6";
const drawn = new WeakMap();

async function draw(figure) {
  const address = figure.dataset.solid;
  if (drawn.get(figure) === address) return;
  drawn.set(figure, address);
  const place = figure.querySelector(".solid-canvas"), says = place.querySelector(".solid-missing");
  let three;
  try {
    three = await import("./three.module.min.js");
  } catch {
    says.textContent = "The 3-D view was not built: npm was missing. Install npm and build again; all figures beside are there without it.";
    return;
  }
  const answer = await fetch(address);
  if (!answer.ok) { says.textContent = "The solid is no longer there. Solve it again."; return; }
  const data = await answer.arrayBuffer(), head = new Uint32Array(data, 0, 2), corners = head[0], each = 8;
  const numbers = new Float32Array(data, 8, corners * each), triangles = new Uint32Array(data, 8 + corners * each * 4, head[1] * 3);
  const force = Number(figure.dataset.force);
  const positions = new Float32Array(corners * 3), colours = new Float32Array(corners * 3);
  const palette = steps.map(s => new three.Color(s)), overColour = new three.Color(over), unknownColour = new three.Color(unknown);
  let most = 0, low = [1e9, 1e9, 1e9], high = [-1e9, -1e9, -1e9];
  for (let i = 0; i < corners; i++) {
    const at = i * each, share = numbers[at + 7] > 0 ? numbers[at + 6] * force / numbers[at + 7] : -1;
    const colour = share < 0 ? unknownColour : share > 1 ? overColour : palette[Math.min(6, Math.floor(share * 7))];
    colour.toArray(colours, i * 3);
    most = Math.max(most, Math.hypot(numbers[at + 3], numbers[at + 4], numbers[at + 5]) * force);
    for (let a = 0; a < 3; a++) { low[a] = Math.min(low[a], numbers[at + a]); high[a] = Math.max(high[a], numbers[at + a]); }
  }
  const middle = low.map((l, a) => (l + high[a]) / 2), size = Math.hypot(...low.map((l, a) => high[a] - l));

  const geometry = new three.BufferGeometry();
  geometry.setAttribute("position", new three.BufferAttribute(positions, 3));
  geometry.setAttribute("color", new three.BufferAttribute(colours, 3));
  geometry.setIndex(new three.BufferAttribute(triangles, 1));
  const scene = new three.Scene();
  const mesh = new three.Mesh(geometry, new three.MeshLambertMaterial({ vertexColors: true, flatShading: true }));
  scene.add(mesh, new three.HemisphereLight(0xffffff, 0x9a9484, 2.6));
  const lamp = new three.DirectionalLight(0xffffff, 1.5);
  scene.add(lamp);
  const ring = new three.Mesh(new three.TorusGeometry(size * 0.018, size * 0.003, 8, 32), new three.MeshBasicMaterial({ color: 0x9c3d0e, depthTest: false }));
  ring.renderOrder = 1;
  const weak = figure.dataset.weakest ? figure.dataset.weakest.split(" ").map(Number) : null;
  let weakCorner = -1;
  if (weak) {
    let least = 1e9;
    for (let i = 0; i < corners; i++) {
      const d = Math.hypot(numbers[i * each] - weak[0], numbers[i * each + 1] - weak[1], numbers[i * each + 2] - weak[2]);
      if (d < least) { least = d; weakCorner = i; }
    }
    scene.add(ring);
  }

  const camera = new three.PerspectiveCamera(32, 1, size / 100, size * 20);
  camera.up.set(0, 0, 1);
  let renderer;
  try {
    renderer = new three.WebGLRenderer({ antialias: true, alpha: true });
  } catch {
    says.textContent = "This browser cannot draw in 3-D (WebGL is off). All figures beside are there without it.";
    return;
  }
  renderer.setPixelRatio(Math.min(2, devicePixelRatio || 1));
  place.replaceChildren(renderer.domElement);
  const canvas = renderer.domElement;
  canvas.tabIndex = 0;
  canvas.setAttribute("role", "img");
  canvas.setAttribute("aria-label", "The deformed frame, shaded by share of yield strength. Arrow keys turn it, plus and minus bring it nearer and farther.");

  let around = -0.7, tilt = 0.35, away = size * 1.75, waiting = false;
  const larger = figure.querySelector("[data-larger]"), times = figure.querySelector("[data-times]");
  const usual = most > 0 ? size * 0.05 / most : 1;
  function deform() {
    const by = usual * (larger.value / 50) ** 2;
    times.textContent = by < 10 ? by.toFixed(1) : Math.round(by);
    for (let i = 0; i < corners; i++)
      for (let a = 0; a < 3; a++)
        positions[i * 3 + a] = numbers[i * each + a] - middle[a] + by * force * numbers[i * each + 3 + a];
    geometry.attributes.position.needsUpdate = true;
    geometry.computeBoundingSphere();
    if (weakCorner >= 0) ring.position.fromArray(positions, weakCorner * 3);
    show();
  }
  function show() {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      camera.position.set(away * Math.cos(tilt) * Math.sin(around), -away * Math.cos(tilt) * Math.cos(around), away * Math.sin(tilt));
      camera.lookAt(0, 0, 0);
      lamp.position.copy(camera.position);
      ring.quaternion.copy(camera.quaternion);
      renderer.render(scene, camera);
    });
  }
  function fit() {
    const wide = place.clientWidth, tall = Math.round(Math.min(wide * 1.1, 620));
    renderer.setSize(wide, tall);
    camera.aspect = wide / tall;
    camera.updateProjectionMatrix();
    show();
  }
  function turn(way) {
    if (way === "left") around -= 0.2;
    if (way === "right") around += 0.2;
    if (way === "up") tilt = Math.min(1.5, tilt + 0.15);
    if (way === "down") tilt = Math.max(-1.5, tilt - 0.15);
    if (way === "near") away = Math.max(size * 0.4, away * 0.85);
    if (way === "far") away = Math.min(size * 6, away / 0.85);
    show();
  }

  // one finger turns, two bring nearer; a touch without a move reads
  const fingers = new Map();
  let moved = 0, apart = 0;
  canvas.addEventListener("pointerdown", e => { canvas.setPointerCapture(e.pointerId); fingers.set(e.pointerId, [e.clientX, e.clientY]); if (fingers.size === 1) moved = 0; apart = 0; });
  canvas.addEventListener("pointermove", e => {
    const was = fingers.get(e.pointerId);
    if (!was) return;
    const [dx, dy] = [e.clientX - was[0], e.clientY - was[1]];
    fingers.set(e.pointerId, [e.clientX, e.clientY]);
    moved += Math.abs(dx) + Math.abs(dy);
    if (fingers.size === 1) {
      around -= dx * 0.008;
      tilt = Math.max(-1.5, Math.min(1.5, tilt + dy * 0.008));
    } else if (fingers.size === 2) {
      const [a, b] = [...fingers.values()], now = Math.hypot(a[0] - b[0], a[1] - b[1]);
      if (apart > 0) away = Math.max(size * 0.4, Math.min(size * 6, away * apart / now));
      apart = now;
    }
    show();
  });
  const lift = e => { if (fingers.delete(e.pointerId) && e.type === "pointerup" && moved < 6 && fingers.size === 0) read(e); };
  canvas.addEventListener("pointerup", lift);
  canvas.addEventListener("pointercancel", lift);
  canvas.addEventListener("wheel", e => { e.preventDefault(); turn(e.deltaY < 0 ? "near" : "far"); }, { passive: false });
  canvas.addEventListener("keydown", e => {
    const way = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down", "+": "near", "=": "near", "-": "far" }[e.key];
    if (!way) return;
    e.preventDefault();
    turn(way);
  });
  for (const button of figure.querySelectorAll("[data-turn]")) button.onclick = () => turn(button.dataset.turn);

  const caster = new three.Raycaster();
  function read(e) {
    const box = canvas.getBoundingClientRect();
    caster.setFromCamera(new three.Vector2((e.clientX - box.left) / box.width * 2 - 1, 1 - (e.clientY - box.top) / box.height * 2), camera);
    const hit = caster.intersectObject(mesh)[0], out = figure.querySelector("[data-read]");
    if (!hit) { out.textContent = ""; return; }
    const at = hit.face.a * each, imperial = figure.dataset.unitLength === "in";
    const stress = numbers[at + 6] * force / 1e6, yields = numbers[at + 7] / 1e6, way = Math.hypot(numbers[at + 3], numbers[at + 4], numbers[at + 5]) * force * 1e3;
    const show = x => x >= 100 ? x.toFixed(0) : x >= 1 ? x.toFixed(1) : x.toFixed(2);
    const pressure = imperial ? show(stress / 6.894757) + " ksi" : show(stress) + " MPa";
    out.textContent = (yields > 0 ? `Here ${pressure}, ${Math.round(stress / yields * 100)} % of yield` : `Here ${pressure}`)
      + `; it moves ${imperial ? (way / 25.4).toFixed(4) + " in" : way.toFixed(3) + " mm"}.`;
  }

  larger.oninput = deform;
  new ResizeObserver(fit).observe(place);
  deform();
  fit();
}

const look = () => document.querySelectorAll("[data-solid]").forEach(draw);
new MutationObserver(look).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ["data-solid"] });
look();
