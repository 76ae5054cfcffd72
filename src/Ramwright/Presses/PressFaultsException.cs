namespace Ramwright.Presses;

/// <summary>A press that was read without faults turns out, with its stock at hand, to be one that cannot be built.</summary>
public sealed class PressFaultsException : Exception
{
    /// <summary>With nothing said.</summary>
    public PressFaultsException() : this([]) { }

    /// <summary>With a message alone.</summary>
    public PressFaultsException(string message) : base(message) => Faults = [];

    /// <summary>With a message and what led to it.</summary>
    public PressFaultsException(string message, Exception inner) : base(message, inner) => Faults = [];

    /// <summary>With its faults.</summary>
    public PressFaultsException(IReadOnlyList<Fault> faults)
        : base(string.Join("; ", faults.Select(f => $"{f.Path}: {f.Found}"))) => Faults = faults;

    /// <summary>All of them, each with the path of the value.</summary>
    public IReadOnlyList<Fault> Faults { get; }
}
