using System.Security.Cryptography;
using System.Text;
using Ramwright.Fabrication;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Making;

/// <summary>What every maker of files is handed: a checked press, its parts, and how the reader measures.</summary>
/// <param name="Press">The press file.</param>
/// <param name="Check">The press, checked.</param>
/// <param name="Units">Units of what is written for reading; cut files are always in millimetres.</param>
public sealed record MakeOf(PressOnDisk Press, PressCheck Check, UnitSystem Units)
{
    /// <summary>The press with every number settled.</summary>
    public Rig Rig => Check.Rig;

    /// <summary>Its parts.</summary>
    public PartList Parts { get; } = PartList.Of(Check.Rig);

    /// <summary>SHA-256 of the press file's text, so that papers and file can be held against each other.</summary>
    public string Hash { get; } = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Press.Reading.Text)));
}
