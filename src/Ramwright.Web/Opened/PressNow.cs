using Ramwright.Files;
using Ramwright.Ladders;

namespace Ramwright.Web.Opened;

/// <summary>An open press at one moment. Never changes; a later moment is another of these.</summary>
public sealed record PressNow
{
    /// <summary>Counts up with every change.</summary>
    public required int Version { get; init; }

    /// <summary>The text; null where the file's bytes are no text that could be edited.</summary>
    public required string? Text { get; init; }

    /// <summary>The text as it was read, with its faults.</summary>
    public required CheckedPress Read { get; init; }

    /// <summary>The last good answer: of this text, or of an earlier one while faults stand; null where there never was one.</summary>
    public required PressCheck? Check { get; init; }

    /// <summary>Whether <see cref="Check"/> belongs to an earlier text.</summary>
    public bool IsStale => Read.Check is null && Check is not null;

    /// <summary>Whether the text differs from the file.</summary>
    public required bool IsUnsaved { get; init; }

    /// <summary>Whether there is something to take back.</summary>
    public required bool CanUndo { get; init; }

    /// <summary>Whether there is something to do again.</summary>
    public required bool CanRedo { get; init; }

    /// <summary>What someone else wrote to the file while changes here were not saved; null where nobody did.</summary>
    public required DiskText? Theirs { get; init; }

    /// <summary>Why the last thing asked for was not done; empty where it was.</summary>
    public string Refusal { get; init; } = "";
}
