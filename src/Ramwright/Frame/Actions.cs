namespace Ramwright.Frame;

/// <summary>
/// The resultants that one side of a cut passes to the other, on the face whose normal is the member's +x, in its local
/// axes: N = ∫σ dA, My = ∫σ z dA, Mz = −∫σ y dA, Vy and Vz = ∫τ dA, T = ∫(y τxz − z τxy) dA; so σ = N/A + My z/Iy − Mz y/Iz.
/// </summary>
/// <param name="N">Axial force, tension positive, N.</param>
/// <param name="Vy">Shear along y, N.</param>
/// <param name="Vz">Shear along z, N.</param>
/// <param name="T">Torque, N·m.</param>
/// <param name="My">Moment about y, N·m; positive stretches the +z edge.</param>
/// <param name="Mz">Moment about z, N·m; positive stretches the −y edge.</param>
public readonly record struct Actions(double N, double Vy, double Vz, double T, double My, double Mz)
{
    /// <summary>The same actions for a force <paramref name="s"/> times as great.</summary>
    public static Actions operator *(double s, Actions a) =>
        new(s * a.N, s * a.Vy, s * a.Vz, s * a.T, s * a.My, s * a.Mz);
}
