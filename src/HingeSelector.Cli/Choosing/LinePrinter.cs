using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;
using Spectre.Console;

namespace HingeSelector.Cli.Choosing;

/// <summary>Prints lines as plain text or Markdown; headings are set off only where a person looks at a terminal.</summary>
internal sealed class LinePrinter
{
    private readonly Surroundings _around;
    private readonly bool _markdown;
    private readonly IAnsiConsole? _console;
    private bool _started;

    public LinePrinter(Surroundings around, bool markdown)
    {
        _around = around;
        _markdown = markdown;
        if (markdown || !around.MayStyle)
            return;
        _console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.Yes, ColorSystem = ColorSystemSupport.NoColors, Out = new AnsiConsoleOutput(around.Output), Interactive = InteractionSupport.No });
        // The rows are wrapped already: the same words stand in the same rows on a terminal and in a pipe.
        _console.Profile.Width = PlainText.Width * 2;
    }

    /// <summary>Prints one block, an empty row before it unless it is the first.</summary>
    public void Print(IEnumerable<Line> lines)
    {
        if (_started)
            _around.Output.WriteLine();
        _started = true;
        if (_markdown)
        {
            _around.Output.Write(MarkdownText.Of(lines));
            return;
        }
        foreach (var line in lines)
        {
            foreach (var row in PlainText.Rows(line))
                PrintRow(row, line.Kind);
        }
    }

    private void PrintRow(string row, LineKind kind)
    {
        if (_console is null || kind == LineKind.Text)
        {
            _around.Output.WriteLine(row);
            return;
        }
        var style = new Style(decoration: kind == LineKind.Faint ? Decoration.Dim : Decoration.Bold);
        _console.Write(new Text(row, style));
        _around.Output.WriteLine();
    }
}
