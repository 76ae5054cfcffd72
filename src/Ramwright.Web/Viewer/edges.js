// The edges of a surface that a draughtsman would draw: where two faces meet at an angle, or only one is there.
const SHARP = Math.cos(28 * Math.PI / 180);

export function edgesOf(positions, triangles) {
  const count = triangles.length / 3, normals = new Float32Array(triangles.length);
  for (let t = 0; t < count; t++) {
    const [a, b, c] = [0, 1, 2].map(k => 3 * triangles[3 * t + k]);
    const ux = positions[b] - positions[a], uy = positions[b + 1] - positions[a + 1], uz = positions[b + 2] - positions[a + 2];
    const vx = positions[c] - positions[a], vy = positions[c + 1] - positions[a + 1], vz = positions[c + 2] - positions[a + 2];
    let x = uy * vz - uz * vy, y = uz * vx - ux * vz, z = ux * vy - uy * vx;
    const size = Math.hypot(x, y, z) || 1;
    normals.set([x / size, y / size, z / size], 3 * t);
  }
  const seen = new Map(), vertices = positions.length / 3, lines = [];
  for (let t = 0; t < count; t++) {
    for (let k = 0; k < 3; k++) {
      const a = triangles[3 * t + k], b = triangles[3 * t + (k + 1) % 3], key = Math.min(a, b) * vertices + Math.max(a, b), other = seen.get(key);
      if (other === undefined) {
        seen.set(key, t);
        continue;
      }
      seen.delete(key);
      const cos = normals[3 * t] * normals[3 * other] + normals[3 * t + 1] * normals[3 * other + 1] + normals[3 * t + 2] * normals[3 * other + 2];
      if (cos < SHARP) lines.push(a, b);
    }
  }
  for (const key of seen.keys()) lines.push(Math.floor(key / vertices), key % vertices);
  return new Uint32Array(lines);
}
