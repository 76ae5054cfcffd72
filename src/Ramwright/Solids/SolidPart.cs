using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>One body of steel, made of boxes along the axes.</summary>
/// <param name="Name">What the reader calls it.</param>
/// <param name="Blocks">Its boxes; where two touch face to face they are one.</param>
public sealed record SolidPart(string Name, IReadOnlyList<Cuboid> Blocks)
{
    /// <summary>Boxes cut out of it.</summary>
    public IReadOnlyList<Cuboid> Cuts { get; init; } = [];
    /// <summary>Those of its boxes that nobody measures closely: what stands for rounded roots, or for ties that were not described.</summary>
    public IReadOnlyList<Cuboid> Loose { get; init; } = [];
    /// <summary>Young's modulus, Pa.</summary>
    public double E { get; init; } = 210e9;
    /// <summary>Poisson's ratio.</summary>
    public double Nu { get; init; } = 0.3;
}

/// <summary>Where two parts that touch are one; everywhere else they only stand side by side and may part or slide.</summary>
/// <param name="A">Number of one part.</param>
/// <param name="B">Number of the other.</param>
/// <param name="Where">Where they are joined; faces of it are planes of the grid.</param>
public readonly record struct Bond(int A, int B, Cuboid Where);

/// <summary>A solid that cannot be meshed or held as it was described; the message names the part.</summary>
public class SolidFaultException : Exception
{
    /// <summary>Says what is wrong.</summary>
    public SolidFaultException(string message) : base(message) => Says = message;
    /// <summary>Says what is wrong, with its numbers apart; the message has them in metric units.</summary>
    public SolidFaultException(Remark says) : base(says.ToString()) => Says = says;
    /// <summary>Says what is wrong.</summary>
    public SolidFaultException(string message, Exception inner) : base(message, inner) => Says = message;
    /// <summary>Says nothing.</summary>
    public SolidFaultException() => Says = Message;

    /// <summary>What is wrong, to be read in any units.</summary>
    public Remark Says { get; }
}

/// <summary>A grid on which the iteration does not close in; one of other cells may do.</summary>
public sealed class SolidUnsolvedException : SolidFaultException
{
    /// <summary>Says what is wrong.</summary>
    public SolidUnsolvedException(string message) : base(message) { }
    /// <summary>Says what is wrong.</summary>
    public SolidUnsolvedException(string message, Exception inner) : base(message, inner) { }
    /// <summary>Says nothing.</summary>
    public SolidUnsolvedException() { }
}
