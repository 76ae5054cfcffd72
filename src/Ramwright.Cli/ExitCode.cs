namespace Ramwright.Cli;

/// <summary>What a script sees.</summary>
internal static class ExitCode
{
    /// <summary>The press holds and meets its wanted rating; or the command did what it was asked.</summary>
    public const int Holds = 0;

    /// <summary>The press does not hold, or is not safe to its wanted force.</summary>
    public const int DoesNotHold = 1;

    /// <summary>The input is wrong.</summary>
    public const int WrongInput = 2;
}
