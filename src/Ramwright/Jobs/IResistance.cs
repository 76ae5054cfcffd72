namespace Ramwright.Jobs;

/// <summary>What the work pushes back with as the ram goes on: the one thing a press must know of a job.</summary>
/// <remarks>Safe to call from many threads; smooth enough to be integrated in time.</remarks>
public interface IResistance
{
    /// <summary>From the touch to where the job is done, m.</summary>
    double Travel { get; }

    /// <summary>Force against the ram, N; never negative.</summary>
    /// <param name="travel">How far the ram has gone since the touch, m, 0 to <see cref="Travel"/>.</param>
    /// <param name="speed">Speed of the ram, m/s, 0 or more; it matters for hot work only.</param>
    /// <param name="temperature">Mean temperature of the work, °C; it matters for hot work only.</param>
    double Force(double travel, double speed, double temperature);
}
