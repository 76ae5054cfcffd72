using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Web.Bench;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests.Components;

/// <summary>What components of the bench lean on, without a server.</summary>
public abstract class BenchContext : BunitContext
{
    private protected BenchContext()
    {
        Services.AddSingleton(new BenchFolder(Folder.Folder));
        Services.AddScoped<ViewChoice>();
        Services.AddSingleton<Ramwright.Web.Solid.SolidDesk>();
        SetRendererInfo(new Microsoft.AspNetCore.Components.RendererInfo("Server", isInteractive: true));
    }

    private protected TestFolder Folder { get; } = new();

    private protected static PressCheck Check(string example) => CheckedPress.Of(PressOnDisk.Read(Example.Text(example), example + PressFile.Ending, example)).Check!;

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        Folder.Dispose();
    }
}
