using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Ramwright.Web.Door;
using Ramwright.Web.Opened;
using Ramwright.Web.Pages;

namespace Ramwright.Web;

/// <summary>Serves the bench: to this machine alone, or with a key to others on the same net.</summary>
internal static class BenchServer
{
    /// <summary>
    /// Scripts come from the program itself and from nowhere else; nothing is fetched from outside, and no other site may frame the bench.
    /// </summary>
    private const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>The longest body of a request, bytes: no page sends so much.</summary>
    private const long MostBody = 1_000_000;

    /// <summary>Runs until it is stopped.</summary>
    /// <returns>0, or 2 where the words are wrong or the port is taken.</returns>
    public static async Task<int> RunAsync(string[] words)
    {
        (BenchArguments? arguments, string fault) = BenchArguments.Read(words);
        if (arguments is null)
        {
            await Console.Error.WriteLineAsync(fault);
            return 2;
        }

        int port = arguments.Port ?? (IsFree(BenchArguments.UsualPort) ? BenchArguments.UsualPort : 0);
        AccessKey? key = arguments.Lan ? AccessKey.New() : null;
        await using WebApplication app = Build(arguments.Folder, port, key);
        try
        {
            await app.StartAsync();
        }
        catch (IOException taken)
        {
            await Console.Error.WriteLineAsync($"port {port} cannot be had: {taken.Message} Leave --port out to take a free one.");
            return 2;
        }

        string place = arguments.Press is { } press ? "/press/" + Uri.EscapeDataString(press) : "/";
        string address = Address(app) + place;
        Console.WriteLine($"The bench is at {address}");
        if (key is null)
        {
            Console.WriteLine("It serves this machine only. Ctrl+C stops it; what is not saved is then lost.");
        }
        else
        {
            Console.WriteLine($"Others on the same net may use it with this key: {key.Text}");
            foreach (IPAddress other in OwnSite.Addresses().Where(a => a.AddressFamily == AddressFamily.InterNetwork))
                Console.WriteLine($"  http://{other}:{new Uri(address).Port}{place}?key={key.Text}");
            Console.WriteLine("Whoever has the key can change and save every press in this folder. It is sent unencrypted: use it on a net you trust.");
            Console.WriteLine("Ctrl+C stops the bench; what is not saved is then lost.");
            address += "?key=" + key.Text;
        }

        if (arguments.Browser)
            OpenBrowser(address);
        await app.WaitForShutdownAsync();
        return 0;
    }

    /// <summary>Makes the server, not yet started.</summary>
    /// <param name="folder">The folder whose presses are on the bench.</param>
    /// <param name="port">The port; 0 for any.</param>
    /// <param name="key">The key that others must show; null where it listens on 127.0.0.1 alone.</param>
    public static WebApplication Build(string folder, int port, AccessKey? key = null)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = "Ramwright.Web",
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.Logging.ClearProviders().AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(k =>
        {
            if (key is null)
                k.Listen(IPAddress.Loopback, port);
            else
                k.Listen(IPAddress.Any, port);
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = MostBody;
        });
        // a page of another site that makes its name point here is refused by the name it asks for
        builder.Services.Configure<HostFilteringOptions>(o => o.AllowedHosts = key is null ? ["127.0.0.1", "localhost"] : [.. OwnSite.Names()]);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();     // nothing outlives the server
        builder.Services.AddSingleton(new BenchFolder(folder));
        builder.Services.AddSingleton<Solid.SolidDesk>();
        builder.Services.AddScoped<Bench.ViewChoice>();

        WebApplication app = builder.Build();
        app.UseHostFiltering();
        app.Use((context, next) =>
        {
            IHeaderDictionary headers = context.Response.Headers;
            headers.ContentSecurityPolicy = Policy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            if (context.Request.ContentLength > MostBody)
            {
                context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
                return Task.CompletedTask;
            }

            return next(context);
        });
        app.UseOwnSiteOnly();
        if (key is not null)
            app.UseKeyGate(key);
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapGet("/press/{name}/solid-surface", (string name, Solid.SolidDesk desk) =>
            desk.Of(name)?.Surface is { } bytes ? Results.Bytes(bytes, "application/octet-stream") : Results.NotFound());
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    /// <summary>Where a started server listens.</summary>
    public static string Address(WebApplication app) =>
        app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal);

    private static bool IsFree(int port)
    {
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, port);
            probe.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static void OpenBrowser(string address)
    {
        try
        {
            ProcessStartInfo start = OperatingSystem.IsWindows() ? new(address) { UseShellExecute = true }
                : new(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address]) { RedirectStandardError = true, RedirectStandardOutput = true };
            using Process? _ = Process.Start(start);
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.WriteLine("No browser could be opened; open the address above in one.");
        }
    }
}
