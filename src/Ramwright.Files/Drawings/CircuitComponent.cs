namespace Ramwright.Files.Drawings;

/// <summary>A component of the hydraulic circuit, as its table of settings tells it.</summary>
/// <param name="Number">Its number on the drawing.</param>
/// <param name="What">What it is.</param>
/// <param name="Setting">How it is set, or its size; what the file does not say is said to be open.</param>
public sealed record CircuitComponent(int Number, string What, string Setting)
{
    /// <summary>What stands where the file says nothing and nothing is assumed.</summary>
    public const string Open = "builder to decide";

    /// <summary>The same as a sentence.</summary>
    public const string OpenSentence = "Builder to decide.";
}

/// <summary>The circuit: its drawing and its components.</summary>
/// <param name="Sheet">The drawing.</param>
/// <param name="Components">The components, by their numbers.</param>
public sealed record Circuit(Sheet Sheet, IReadOnlyList<CircuitComponent> Components);
