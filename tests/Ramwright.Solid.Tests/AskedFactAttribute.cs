namespace Ramwright.Solid.Tests;

/// <summary>Solves anew and writes tables, only where an environment variable asks for it; else it is skipped.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class AskedFactAttribute : FactAttribute
{
    /// <summary>Looks whether it is asked for.</summary>
    /// <param name="variable">Name of the variable.</param>
    public AskedFactAttribute(string variable)
    {
        if (string.IsNullOrEmpty(Environment.GetEnvironmentVariable(variable)))
            Skip = $"writes tables anew where {variable} asks for it";
    }
}
