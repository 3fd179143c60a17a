namespace HingeSelector.Tests.Pages;

/// <summary>One fenced block of a page that staff follow.</summary>
/// <param name="Line">Line of the opening fence, counted from one.</param>
/// <param name="Kind">Word behind the fence: sh, text, yaml, diff, csv.</param>
/// <param name="Rest">What stands behind that word: a file, or <c>exit N</c>.</param>
/// <param name="Text">The block.</param>
internal sealed record PageStep(int Line, string Kind, string Rest, string Text)
{
    /// <summary>The fenced blocks of a page in their order.</summary>
    public static IReadOnlyList<PageStep> Of(string page)
    {
        var steps = new List<PageStep>();
        var lines = page.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
                continue;
            var end = Array.FindIndex(lines, i + 1, l => l.StartsWith("```", StringComparison.Ordinal));
            var head = lines[i][3..].Split(' ', 2);
            steps.Add(new PageStep(i + 1, head[0], head.Length > 1 ? head[1] : "", string.Join('\n', lines[(i + 1)..end]) + "\n"));
            i = end;
        }
        return steps;
    }
}
