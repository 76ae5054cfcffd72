// Reads a skin as the server sends it: counts, then positions, displacements, stress, triangles and the part of each, little-endian.
export function read(buffer, parts) {
  const [vertices, triangles, weakest] = new Uint32Array(buffer, 0, 3);
  let from = 16;
  const take = (kind, count) => {
    const made = new kind(buffer, from, count);
    from += made.byteLength;
    return made;
  };
  const skin = {
    weakest,
    positions: take(Float32Array, 3 * vertices),
    displacements: take(Float32Array, 3 * vertices),
    stress: take(Float32Array, vertices),
    triangles: take(Uint32Array, 3 * triangles),
    partOf: take(Uint16Array, triangles),
    partAt: new Uint16Array(vertices),
    use: new Float32Array(vertices),
  };
  for (let t = 0; t < triangles; t++)
    for (let k = 0; k < 3; k++) skin.partAt[skin.triangles[3 * t + k]] = skin.partOf[t];
  for (let v = 0; v < vertices; v++) skin.use[v] = skin.stress[v] / parts[skin.partAt[v]].yield;
  return skin;
}
