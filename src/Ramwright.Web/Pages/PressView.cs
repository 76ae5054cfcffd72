using Microsoft.AspNetCore.Components;
using Ramwright.Quantities;
using Ramwright.Web.Bench;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Pages;

/// <summary>A page about one press: it follows the press as anybody changes it.</summary>
public abstract class PressView : ComponentBase, IDisposable
{
    private Timer? _look;
    private bool _gone;
    private string? _name;

    [Parameter] public string Name { get; set; } = "";

    [SupplyParameterFromQuery(Name = "units")] public string? UnitsWord { get; set; }

    [Inject] public BenchFolder Folder { get; set; } = null!;

    [Inject] public ViewChoice View { get; set; } = null!;

    public OpenPress? Press { get; private set; }

    /// <summary>The press as it stands; null where it could not be opened.</summary>
    public PressNow? Now { get; private set; }

    /// <summary>Why it could not be opened.</summary>
    public string Missing { get; private set; } = "";

    public EditDesk? Desk { get; private set; }

    public UnitSystem Units => View.Units ?? Now?.Read.Press.Reading.Units ?? UnitSystem.Metric;

    /// <summary>There once the page answers to typing.</summary>
    public string? Live => RendererInfo.IsInteractive ? "yes" : null;

    protected override void OnParametersSet()
    {
        if (_name == Name)
            return;
        // the same page may be led on to another press
        Leave();
        _name = Name;
        if (UnitsWord is not null)
            View.Units = UnitsWord == "imperial" ? UnitSystem.Imperial : UnitSystem.Metric;
        try
        {
            Press = Folder.Find(Name);
            Missing = Press is null ? $"There is no press called {Name} in this folder." : "";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Missing = $"{Name} cannot be read: {e.Message}";
        }

        if (Press is null)
            return;
        Desk = new EditDesk(Press);
        Now = Press.Now;
        Shown();
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (_look is not null || Press is null || _gone || !RendererInfo.IsInteractive)
            return;
        Press.Changed += Heard;
        OpenPress press = Press;
        _look = new Timer(_ => press.Look(), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(2));
        if (Press.Now != Now)
            Heard();        // changed between the first drawing and now
    }

    private void Heard() => _ = InvokeAsync(() =>
    {
        if (_gone || Press is null || ReferenceEquals(Now, Press.Now))
            return;
        Now = Press.Now;
        Shown();
        StateHasChanged();
    });

    /// <summary>Called when <see cref="Now"/> or the view has changed, before it is drawn.</summary>
    protected virtual void Shown()
    {
    }

    public Task Do(Func<OpenPress, PressNow> what) => Desk!.Do(what);

    /// <summary>Called by what stands round the page when units were switched.</summary>
    public void Again()
    {
        Shown();
        StateHasChanged();
    }

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        _gone = true;
        Leave();
    }

    private void Leave()
    {
        _look?.Dispose();
        _look = null;
        if (Press is not null)
            Press.Changed -= Heard;
        Press = null;
    }
}
