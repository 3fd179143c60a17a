using System.Diagnostics;
using System.Globalization;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Pages;

/// <summary>Follows a page to the letter: in a copy of rules and content, with a real shell and the real program.</summary>
/// <remarks>
/// A block <c>yaml FILE</c> makes that file, <c>diff FILE</c> puts the lines with a plus in the place of those with a minus,
/// <c>sh</c> is typed (<c>sh exit N</c> when the page says that it ends so), and <c>text</c> is what then stands on the screen;
/// a line of three dots stands for any lines.
/// </remarks>
internal sealed class PageWalk : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("hinge-page-");
    private readonly string _page;
    private readonly bool _rewrites;
    private readonly Dictionary<PageStep, string> _shown = [];
    private string _screen = "";

    public PageWalk(string page, bool rewrites)
    {
        _rewrites = rewrites;
        _page = page;
        foreach (var part in new[] { "rules", "content" })
            Copy(Path.Combine(RepositoryFiles.Root, part), Path.Combine(_folder.FullName, part));
    }

    /// <summary>Takes every step; the first that does not come out as written fails.</summary>
    public void Follow()
    {
        var text = File.ReadAllText(_page);
        foreach (var step in PageStep.Of(text))
            Take(step);
        if (_shown.Count > 0)
            Rewrite(text);
    }

    private void Take(PageStep step)
    {
        switch (step.Kind)
        {
            case "sh":
                Type(step);
                break;
            case "text":
                Compare(step);
                break;
            case "diff":
                Edit(step);
                break;
            case "yaml" or "csv" or "md" when step.Rest.Length > 0:
                var path = Path.Combine(_folder.FullName, step.Rest);
                File.Exists(path).ShouldBeFalse($"{At(step)}: {step.Rest} is there already");
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, step.Text);
                break;
            case "yaml":
                break;
            default:
                throw new InvalidOperationException($"{At(step)}: nobody knows how to follow a block of {step.Kind}");
        }
    }

    private void Edit(PageStep step)
    {
        var lines = step.Text.TrimEnd('\n').Split('\n');
        var before = Lines(lines, '+');
        var after = Lines(lines, '-');
        var path = Path.Combine(_folder.FullName, step.Rest);
        var text = File.ReadAllText(path);
        text.Split(before).Length.ShouldBe(2, $"{At(step)}: the lines to change must stand in {step.Rest} once");
        File.WriteAllText(path, text.Replace(before, after, StringComparison.Ordinal));
    }

    // Of a change, the lines without those of one sign, and without the signs.
    private static string Lines(string[] lines, char without)
        => string.Concat(lines.Where(l => l[0] != without).Select(l => l[1..] + "\n"));

    private void Type(PageStep step)
    {
        var tests = new DirectoryInfo(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        var program = Path.Combine(tests.Parent!.Parent!.FullName, "HingeSelector.Cli", tests.Name, "hinge-selector.dll");
        using var process = Process.Start(new ProcessStartInfo("sh", ["-c", $"hinge_selector() {{ dotnet '{program}' \"$@\"; }}\n{step.Text.Replace("hinge-selector ", "hinge_selector ", StringComparison.Ordinal)}"])
        {
            WorkingDirectory = _folder.FullName,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var error = process.StandardError.ReadToEndAsync();
        _screen = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        _screen += error.GetAwaiter().GetResult();
        var expected = step.Rest.Length == 0 ? 0 : int.Parse(step.Rest["exit ".Length..], CultureInfo.InvariantCulture);
        process.ExitCode.ShouldBe(expected, $"{At(step)}: {step.Text}{_screen}");
    }

    private void Compare(PageStep step)
    {
        // Three dots are the author's choice of what to show, so such a block is compared and never rewritten.
        if (_rewrites && !step.Text.Split('\n').Contains("..."))
            _shown[step] = _screen;
        else
            Matches(step.Text.TrimEnd('\n').Split('\n'), _screen.TrimEnd('\n').Split('\n')).ShouldBeTrue($"{At(step)}: the screen shows\n{_screen}");
    }

    // From the bottom up, so that lines above keep their numbers.
    private void Rewrite(string text)
    {
        var lines = text.Split('\n').ToList();
        foreach (var (step, shown) in _shown.OrderByDescending(s => s.Key.Line))
        {
            lines.RemoveRange(step.Line, step.Text.Split('\n').Length - 1);
            lines.InsertRange(step.Line, shown.TrimEnd('\n').Split('\n'));
        }
        File.WriteAllText(_page, string.Join('\n', lines));
    }

    private static bool Matches(ReadOnlySpan<string> written, ReadOnlySpan<string> shown)
    {
        if (written.IsEmpty)
            return shown.IsEmpty;
        if (written[0] != "...")
            return !shown.IsEmpty && shown[0].TrimEnd() == written[0].TrimEnd() && Matches(written[1..], shown[1..]);
        for (var skipped = 0; skipped <= shown.Length; skipped++)
        {
            if (Matches(written[1..], shown[skipped..]))
                return true;
        }
        return false;
    }

    private string At(PageStep step) => $"{Path.GetFileName(_page)}:{step.Line}";

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    public void Dispose() => _folder.Delete(true);
}
