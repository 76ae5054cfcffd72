// The frame as a solid: turned by mouse or finger, shaded by how much of the yield is used, bent as far as is asked for.
import {
  BufferAttribute, BufferGeometry, Color, DoubleSide, LineBasicMaterial, LineSegments, Mesh, PerspectiveCamera, Raycaster, Scene, ShaderMaterial, Vector2, Vector3, WebGLRenderer,
} from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { edgesOf } from "./edges.js";
import { read } from "./skin.js";

const STEPS = 7;

/** From where each frame was seen last. */
const seen = new WeakMap();

/** Shows a skin in a frame that has a canvas and two labels. Returns what the page may ask of it afterwards. */
export async function show(frame, stream, parts, words) {
  const skin = read(await stream.arrayBuffer(), parts);
  const canvas = frame.querySelector("canvas"), weakest = frame.querySelector(".weakest"), touched = frame.querySelector(".touched");
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  const scene = new Scene(), camera = new PerspectiveCamera(32, 1, 0.01, 100);
  camera.up.set(0, 0, 1);

  const geometry = new BufferGeometry(), at = new BufferAttribute(skin.positions.slice(), 3);
  geometry.setAttribute("position", at);
  geometry.setAttribute("use", new BufferAttribute(skin.use, 1));
  geometry.setIndex(new BufferAttribute(skin.triangles, 1));
  const material = steel();
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  scene.add(mesh);
  const outline = new BufferGeometry();
  outline.setAttribute("position", at);
  outline.setIndex(new BufferAttribute(edgesOf(skin.positions, skin.triangles), 1));
  const ink = new LineBasicMaterial({ transparent: true, opacity: 0.55 });
  const lines = new LineSegments(outline, ink);
  lines.frustumCulled = false;
  scene.add(lines);

  geometry.computeBoundingSphere();
  const { center, radius } = geometry.boundingSphere;
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.target.copy(center);
  controls.minDistance = radius * 0.3;
  controls.maxDistance = radius * 8;
  camera.near = radius / 50;
  camera.far = radius * 20;

  let force = 1, amount = 0, picked = -1, waiting = false;
  const draw = () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      renderer.render(scene, camera);
      place(weakest, skin.weakest);
      place(touched, picked);
      // what was touched hangs below its place where it would cover the weakest
      touched.classList.remove("under");
      if (!touched.hidden && !weakest.hidden) {
        const a = touched.getBoundingClientRect(), b = weakest.getBoundingClientRect();
        touched.classList.toggle("under", a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom);
      }
    });
  };

  function look(way) {
    const from = { front: [0, -1, 0.001], side: [1, 0, 0.001], above: [0, -0.001, 1] }[way] || [0.75, -1, 0.5];
    const far = radius / Math.sin((camera.fov / 2) * Math.PI / 180) * Math.max(1, 0.74 / camera.aspect) * 1.08;
    camera.position.copy(center).addScaledVector(new Vector3(...from).normalize(), far);
    controls.update();
    draw();
  }

  function size() {
    const wide = frame.clientWidth, high = frame.clientHeight;
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    renderer.setSize(wide, high, false);
    camera.aspect = wide / high;
    camera.updateProjectionMatrix();
    draw();
  }

  // the label's foot stands on the vertex; behind the steel it fades
  function place(label, vertex) {
    if (vertex < 0) {
      label.hidden = true;
      return;
    }
    const p = new Vector3().fromBufferAttribute(at, vertex), away = camera.position.distanceTo(p);
    const ray = new Raycaster(camera.position, p.clone().sub(camera.position).normalize(), 0, away * 0.995);
    label.classList.toggle("behind", label === weakest && ray.intersectObject(mesh).length > 0);
    p.project(camera);
    label.hidden = false;
    label.classList.toggle("leftward", (p.x + 1) / 2 * frame.clientWidth > frame.clientWidth - 190);
    label.style.left = `${((p.x + 1) / 2 * frame.clientWidth).toFixed(1)}px`;
    label.style.top = `${((1 - p.y) / 2 * frame.clientHeight).toFixed(1)}px`;
  }

  function bend() {
    const from = skin.positions, by = skin.displacements, to = at.array, k = amount * force;
    for (let i = 0; i < to.length; i++) to[i] = from[i] + k * by[i];
    at.needsUpdate = true;
    geometry.computeBoundingSphere();
    draw();
  }

  function say(label, vertex) {
    if (vertex < 0) return;
    const d = skin.displacements, moved = force * Math.hypot(d[3 * vertex], d[3 * vertex + 1], d[3 * vertex + 2]);
    const used = force * skin.use[vertex];
    label.querySelector("b").textContent = `${(label === weakest ? words.weakest + ": " : "")}${skin.partAt[vertex] < parts.length ? parts[skin.partAt[vertex]].name : ""}`;
    label.querySelector("span").textContent =
      `${number(force * skin.stress[vertex] * words.stress)} ${words.stressUnit}, ${number(used * 100)} % of its yield; moves ${number(moved * words.length)} ${words.lengthUnit}`;
  }

  function touch(x, y) {
    const box = canvas.getBoundingClientRect();
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2((x - box.left) / box.width * 2 - 1, 1 - (y - box.top) / box.height * 2), camera);
    const hit = ray.intersectObject(mesh)[0];
    picked = -1;
    if (hit) {
      let near = Infinity;
      for (const v of [hit.face.a, hit.face.b, hit.face.c]) {
        const far = hit.point.distanceTo(new Vector3().fromBufferAttribute(at, v));
        if (far < near) [near, picked] = [far, v];
      }
    }
    say(touched, picked);
    draw();
  }

  let down = null;
  canvas.addEventListener("pointerdown", e => { down = [e.clientX, e.clientY]; });
  canvas.addEventListener("pointerup", e => {
    if (down && Math.hypot(e.clientX - down[0], e.clientY - down[1]) < 6) touch(e.clientX, e.clientY);
    down = null;
  });
  // arrows turn it, plus and minus bring it nearer
  canvas.addEventListener("keydown", e => {
    const turn = { ArrowLeft: [-0.12, 0], ArrowRight: [0.12, 0], ArrowUp: [0, -0.12], ArrowDown: [0, 0.12] }[e.key], zoom = { "+": 0.9, "-": 1.11 }[e.key];
    if (!turn && !zoom) return;
    e.preventDefault();
    const off = camera.position.clone().sub(controls.target);
    if (zoom) off.multiplyScalar(zoom);
    else {
      const round = Math.atan2(off.y, off.x) + turn[0], flat = Math.hypot(off.x, off.y), far = off.length();
      const up = Math.min(1.5, Math.max(-1.5, Math.atan2(off.z, flat) - turn[1]));
      off.set(Math.cos(round) * Math.cos(up) * far, Math.sin(round) * Math.cos(up) * far, Math.sin(up) * far);
    }
    camera.position.copy(controls.target).add(off);
    controls.update();
  });
  controls.addEventListener("change", draw);
  const watch = new ResizeObserver(size);
  watch.observe(frame);
  const dark = matchMedia("(prefers-color-scheme: dark)"), paint = () => { colours(frame, material, ink); draw(); };
  dark.addEventListener("change", paint);
  paint();
  size();
  // a finer picture of the same frame is seen from where the first was
  const was = seen.get(frame);
  if (was && Math.abs(was.radius / radius - 1) < 0.05) {
    camera.position.copy(was.position);
    controls.target.copy(was.target);
    controls.update();
    draw();
  } else look("");
  frame.classList.add("ready");

  return {
    at(newForce, newAmount) {
      [force, amount] = [newForce, newAmount];
      material.uniforms.force.value = force;
      say(weakest, skin.weakest);
      say(touched, picked);
      bend();
    },
    look,
    dispose() {
      seen.set(frame, { radius, position: camera.position, target: controls.target });
      watch.disconnect();
      dark.removeEventListener("change", paint);
      controls.dispose();
      geometry.dispose();
      outline.dispose();
      material.dispose();
      ink.dispose();
      renderer.dispose();
    },
  };
}

// flat faces, lit from the eye; colour in the steps of the ladder
function steel() {
  return new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: { force: { value: 1 }, steps: { value: Array.from({ length: STEPS + 1 }, () => new Color()) } },
    vertexShader: `attribute float use; varying float vUse; varying vec3 vAt;
      void main() { vUse = use; vec4 p = modelViewMatrix * vec4(position, 1.0); vAt = p.xyz; gl_Position = projectionMatrix * p; }`,
    fragmentShader: `uniform float force; uniform vec3 steps[${STEPS + 1}]; varying float vUse; varying vec3 vAt;
      void main() {
        vec3 n = normalize(cross(dFdx(vAt), dFdy(vAt)));
        float light = 0.7 + 0.3 * abs(n.z) + 0.06 * n.y;
        float u = force * vUse * ${STEPS}.0;
        vec3 c = steps[0];
        for (int i = 1; i <= ${STEPS}; i++) if (u >= float(i)) c = steps[i];
        gl_FragColor = vec4(c * light, 1.0);
        #include <colorspace_fragment>
      }`,
  });
}

function colours(frame, material, ink) {
  const style = getComputedStyle(frame), named = [...Array(STEPS).keys()].map(i => `--u${i}`).concat("--over");
  material.uniforms.steps.value = named.map(n => new Color(style.getPropertyValue(n).trim()));
  ink.color = new Color(style.getPropertyValue("--ink").trim());
}

const number = x => Math.abs(x) >= 100 ? x.toFixed(0) : Math.abs(x) >= 10 ? x.toFixed(1).replace(/\.0$/, "") : x.toPrecision(2);
