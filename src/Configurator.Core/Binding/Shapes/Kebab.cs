using System.Text;

namespace Configurator.Core.Binding.Shapes;

/// <summary>Names of our types as definitions write them.</summary>
internal static class Kebab
{
    /// <summary><c>IoLinkMaster</c> to <c>io-link-master</c>.</summary>
    public static string FromPascal(string name)
    {
        var text = new StringBuilder(name.Length + 8);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterUpper(c) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
