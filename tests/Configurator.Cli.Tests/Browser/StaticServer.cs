using System.Net;
using System.Net.Sockets;

namespace Configurator.Cli.Tests.Browser;

/// <summary>Serves a folder below a path on this machine alone.</summary>
internal sealed class StaticServer : IDisposable
{
    private readonly HttpListener _listener = new();
    private readonly string _folder;
    private readonly string _path;

    public StaticServer(string folder, string path)
    {
        (_folder, _path) = (folder, path);
        Address = FormattableString.Invariant($"http://127.0.0.1:{FreePort()}{path}");
        _listener.Prefixes.Add(new Uri(new Uri(Address), "/").AbsoluteUri);
        _listener.Start();
        _ = ServeAsync();
    }

    public string Address { get; }

    public void Dispose() => _listener.Close();

    private async Task ServeAsync()
    {
        try
        {
            while (_listener.IsListening)
            {
                Answer(await _listener.GetContextAsync());
            }
        }
        catch (Exception closed) when (closed is HttpListenerException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private void Answer(HttpListenerContext context)
    {
        var path = context.Request.Url!.AbsolutePath;
        var file = path.StartsWith(_path, StringComparison.Ordinal) ? Path.Combine(_folder, path[_path.Length..]) : "";
        if (File.Exists(file))
        {
            context.Response.ContentType = Path.GetExtension(file) switch
            {
                ".css" => "text/css",
                ".js" => "text/javascript",
                _ => "text/html; charset=utf-8",
            };
            context.Response.OutputStream.Write(File.ReadAllBytes(file));
        }
        else
        {
            // Browsers ask for an icon by themselves; anything else missing is the site's mistake.
            context.Response.StatusCode = path == "/favicon.ico" ? 204 : 404;
        }

        context.Response.Close();
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
