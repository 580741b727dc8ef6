using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>The digest (SHA-256) of what a Parquet file says: what it rests on, then its rows, group by group and column by
/// column. The file's own form has none, so that a changed figure would go unnoticed.</summary>
internal sealed class RowsDigest : IDisposable
{
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private byte[] bytes = [];

    /// <param name="head">What the table rests on.</param>
    public RowsDigest(TableHead head) => hash.AppendData(Encoding.UTF8.GetBytes(head.ToJson()));

    /// <summary>Adds a group of rows.</summary>
    public void Add(TableRows rows)
    {
        if (bytes.Length < rows.Count * (sizeof(long) + 1))
            bytes = new byte[rows.Count * (sizeof(long) + 1)];
        for (var row = 0; row < rows.Count; row++)
            BinaryPrimitives.WriteInt64LittleEndian(bytes.AsSpan(row * sizeof(long)), rows.Numbers[row]);
        hash.AppendData(bytes, 0, rows.Count * sizeof(long));
        foreach (var values in rows.Values)
        {
            if (values.Kind == ColumnKind.Text)
                AddTexts(values.TextCells);
            else
                AddNumbers(values, rows.Count);
        }
    }

    /// <summary>The digest, in hexadecimal digits; nothing can be added afterwards.</summary>
    public string Text() => Convert.ToHexStringLower(hash.GetHashAndReset());

    public void Dispose() => hash.Dispose();

    private void AddNumbers(TableValues values, int count)
    {
        for (var row = 0; row < count; row++)
        {
            var place = bytes.AsSpan(row * (sizeof(double) + 1));
            var number = values[row].Number;
            place[0] = number is null ? (byte)0 : (byte)1;
            BinaryPrimitives.WriteDoubleLittleEndian(place[1..], number ?? 0);
        }
        hash.AppendData(bytes, 0, count * (sizeof(double) + 1));
    }

    private void AddTexts(IEnumerable<string?> texts)
    {
        var all = new StringBuilder();
        foreach (var text in texts)
        {
            if (text is null)
                all.Append('-');
            else
                all.Append(text.Length).Append(':').Append(text);
        }
        hash.AppendData(Encoding.UTF8.GetBytes(all.ToString()));
    }
}
