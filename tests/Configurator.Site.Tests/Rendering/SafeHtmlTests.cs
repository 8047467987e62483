using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

public class SafeHtmlTests
{
    /// <summary>ECMA-335, III.4.21: creates an object; the token of its constructor follows.</summary>
    private const byte NewObject = 0x73;

    [Fact]
    public void Only_the_sanitiser_makes_safe_html()
    {
        using var file = File.OpenRead(typeof(SafeHtml).Assembly.Location);
        using var image = new PEReader(file);
        Assert.Equal(["SafeHtml", "Sanitiser"], Makers(image).Order(StringComparer.Ordinal).Distinct());
    }

    [Fact]
    public void Safe_html_has_no_public_constructor_and_cannot_be_changed()
    {
        Assert.Empty(typeof(SafeHtml).GetConstructors());
        Assert.All(typeof(SafeHtml).GetProperties(), property => Assert.False(property.CanWrite));
    }

    private static IEnumerable<string> Makers(PEReader image)
    {
        var metadata = image.GetMetadataReader();
        var token = typeof(SafeHtml).GetConstructors(BindingFlags.NonPublic | BindingFlags.Instance)
            .Single(it => it.GetParameters() is [{ ParameterType: var type }] && type == typeof(string)).MetadataToken;
        byte[] creation = [NewObject, .. BitConverter.GetBytes(token)];
        foreach (var handle in metadata.MethodDefinitions)
        {
            var method = metadata.GetMethodDefinition(handle);
            if (method.RelativeVirtualAddress != 0 && Body(image, method).AsSpan().IndexOf(creation) >= 0)
            {
                yield return metadata.GetString(metadata.GetTypeDefinition(method.GetDeclaringType()).Name);
            }
        }
    }

    private static byte[] Body(PEReader image, MethodDefinition method) =>
        image.GetMethodBody(method.RelativeVirtualAddress).GetILBytes() ?? [];
}
