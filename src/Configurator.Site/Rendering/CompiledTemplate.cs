using System.Buffers.Binary;
using System.Reflection;
using System.Security.Cryptography;

namespace Configurator.Site.Rendering;

/// <summary>A template's assembly and its symbols, as they are loaded and kept.</summary>
internal sealed record CompiledTemplate(byte[] Image, byte[] Symbols)
{
    private const int SumLength = SHA256.HashSizeInBytes;
    private const int HeadLength = SumLength + sizeof(int);

    /// <summary>A checksum over all that follows, the image's length, image and symbols.</summary>
    public byte[] ToBytes()
    {
        var bytes = new byte[HeadLength + Image.Length + Symbols.Length];
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(SumLength), Image.Length);
        Image.CopyTo(bytes, HeadLength);
        Symbols.CopyTo(bytes, HeadLength + Image.Length);
        SHA256.HashData(bytes.AsSpan(SumLength), bytes);
        return bytes;
    }

    /// <summary>Null where the bytes are not all that was once kept.</summary>
    public static CompiledTemplate? Of(byte[] bytes)
    {
        if (
            bytes.Length < HeadLength
            || !SHA256.HashData(bytes.AsSpan(SumLength)).AsSpan().SequenceEqual(bytes.AsSpan(0, SumLength))
        )
        {
            return null;
        }

        var length = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(SumLength));
        return length >= 0 && length <= bytes.Length - HeadLength
            ? new(bytes[HeadLength..(HeadLength + length)], bytes[(HeadLength + length)..])
            : null;
    }

    public Assembly Load() => Assembly.Load(Image, Symbols);
}
