using System.Text;
using CsCheck;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Reading;

/// <summary>The quick reader and the YAML library give the same tree, or the quick one stands aside.</summary>
public sealed class PlainYamlTests
{
    private static readonly string[] _pieces =
    [
        "a", "key", "b c", "7", "-3 cm", "yes", ": ", ":", ":\n", "\n", "\n  ", "\n    ", "\n      ", "- ", "-", "\n- ", "\n  - ", "#", " # why", "[", "]", "{", "}", ", ", ",", "'", "\"", "''",
        " ", "  ", "&", "*", "!", "|", ">", "%", "@", "`", "?", "? ", "\\", "\t", "\r\n", "---", "...", "\n---\n", "key: value\n", "list: [a, b]\n", "{a: 1, 'b, c': 2}", "~", "<<", "\u00e9", "\u2013", "\u00a0", "\ufeff", "(x)", "/",
    ];

    [Fact]
    public void Every_shipped_rule_file_is_plain_and_reads_as_the_library_reads_it()
    {
        var files = YamlFiles("rules");
        files.Count.ShouldBeGreaterThan(50);
        foreach (var source in files)
            Tree(PlainYaml.Read(source).ShouldNotBeNull($"{source.Path} goes beyond plain YAML and slows every start down")).ShouldBe(Tree(ByLibrary(source, out _)), source.Path);
    }

    [Fact]
    public void Every_shipped_content_file_reads_the_same_either_way()
    {
        foreach (var source in YamlFiles("content"))
        {
            if (PlainYaml.Read(source) is { } plain)
                Tree(plain).ShouldBe(Tree(ByLibrary(source, out _)), source.Path);
        }
    }

    [Theory]
    [InlineData("a: b\n", true)]
    [InlineData("a: b # why\nc: [d, 'e, f', {g: -2 cm}]\n", true)]
    [InlineData("- a: b\n  c:\n    - d\n    - e: f\n- a: b\n", true)]
    [InlineData("a: b\n  c\n", false)]
    [InlineData("a: b: c\n", false)]
    [InlineData("a }, *b: c\n", false)]
    [InlineData("a: b\na: c\n", false)]
    [InlineData("a: &x b\n", false)]
    [InlineData("a: |\n  b\n", false)]
    [InlineData("a:\n", false)]
    [InlineData("a: b\n\tc: d\n", false)]
    [InlineData("a: [b\n", false)]
    [InlineData("a: b\n---\nc: d\n", false)]
    [InlineData("", false)]
    public void What_is_plain(string text, bool plain) => (PlainYaml.Read(new SourceText("file.yaml", text)) is not null).ShouldBe(plain);

    [Fact]
    public void Random_texts_read_the_same_or_not_at_all()
        => Compare(OneOf(_pieces).Array[1, 14].Select(string.Concat), 40_000);

    [Fact]
    public void Shipped_files_with_a_random_edit_read_the_same_or_not_at_all()
    {
        var lines = YamlFiles("rules").SelectMany(f => f.Text.Split('\n').Chunk(30)).ToArray();
        var edited =
            from part in OneOf(lines)
            let text = string.Join('\n', part)
            from place in Gen.Int[0, text.Length]
            from piece in OneOf(_pieces)
            from cut in Gen.Int[0, 3]
            select text[..place] + piece + text[Math.Min(text.Length, place + cut)..];
        Compare(edited, 12_000);
    }

    private static Gen<T> OneOf<T>(T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static void Compare(Gen<string> texts, int cases)
    {
        var (plain, others) = (0, 0);
        texts.Sample(
            text =>
            {
                var source = new SourceText("file.yaml", text);
                if (PlainYaml.Read(source) is not { } tree)
                {
                    Interlocked.Increment(ref others);
                    return;
                }
                Interlocked.Increment(ref plain);
                var library = ByLibrary(source, out var faults);
                faults.ShouldBeEmpty(text);
                Tree(tree).ShouldBe(Tree(library), text);
            },
            iter: cases);
        plain.ShouldBeGreaterThan(cases / 500);
        others.ShouldBeGreaterThan(cases / 100);
    }

    private static YamlNode? ByLibrary(SourceText source, out string faults)
    {
        var bag = new DiagnosticBag();
        var tree = YamlReader.ReadByLibrary(source, bag);
        faults = DiagnosticPrinter.Print(bag.Sorted);
        return tree;
    }

    private static List<SourceText> YamlFiles(string folder)
        => [.. Directory.GetFiles(Path.Combine(RepositoryFiles.Root, folder), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => RepositoryFiles.Source(Path.GetRelativePath(RepositoryFiles.Root, f).Replace('\\', '/')))];

    private static string Tree(YamlNode? node)
    {
        var text = new StringBuilder();
        Write(node, text);
        return text.ToString();
    }

    private static void Write(YamlNode? node, StringBuilder text)
    {
        text.Append(node?.Span.ToString()).Append('+').Append(node?.Span.Length).Append(' ');
        switch (node)
        {
            case YamlScalar scalar:
                text.Append(scalar.Quoted ? "quoted " : "plain ").Append(scalar.Value).Append('\n');
                break;
            case YamlList list:
                text.Append("list\n");
                foreach (var item in list.Items)
                    Write(item, text);
                break;
            case YamlMap map:
                text.Append("map\n");
                foreach (var (key, value) in map.Entries)
                {
                    Write(key, text);
                    Write(value, text);
                }
                break;
            default:
                text.Append("nothing\n");
                break;
        }
        text.Append("end\n");
    }
}
