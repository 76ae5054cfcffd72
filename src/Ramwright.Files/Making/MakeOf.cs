using System.Security.Cryptography;
using System.Text;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Making;

/// <summary>What every maker of files is handed: a checked press, its parts, and how the reader measures.</summary>
/// <param name="Press">The press file.</param>
/// <param name="Check">The press, checked.</param>
/// <param name="Units">Units of what is written for reading; cut files are always in millimetres.</param>
/// <param name="Effort">How hard to look for nests; null takes the best of the first few.</param>
public sealed record MakeOf(PressOnDisk Press, PressCheck Check, UnitSystem Units, NestEffort? Effort = null)
{
    private NestPlan? _nests;
    private BarPlan? _bars;

    /// <summary>The day that stands on the papers; null leaves it to be written in by hand.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>The press with every number settled.</summary>
    public Rig Rig => Check.Rig;

    /// <summary>Its parts.</summary>
    public PartList Parts { get; } = PartList.Of(Check.Rig, Units);

    /// <summary>Which plates are cut from which sheets.</summary>
    public NestPlan Nests => _nests ??= NestPlan.Of(Parts, Rig, Effort);

    /// <summary>Which lengths are sawn from which bars.</summary>
    public BarPlan Bars => _bars ??= BarPlan.Of(Parts, Rig, Units);

    /// <summary>SHA-256 of the press file's text, so that papers and file can be held against each other.</summary>
    public string Hash { get; } = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Press.Reading.Text)));

    /// <summary>The same press with nests looked for in another way.</summary>
    public MakeOf With(NestEffort effort) => this with { Effort = effort, _nests = null };
}
