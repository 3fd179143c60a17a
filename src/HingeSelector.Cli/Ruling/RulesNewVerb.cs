using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Rules;
using HingeSelector.Words;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules new</c>: a file with the skeleton of a rule.</summary>
public sealed class RulesNewVerb : Verb
{
    // Folders of rules/ that hold no rules of their own.
    private static readonly string[] _otherFolders = ["variants", "philosophies", "schema"];

    private readonly Argument<string> _id;
    private readonly Option<string?> _topic;

    /// <summary>Declares argument and option.</summary>
    public RulesNewVerb()
        : base("new", "Begin a rule: a new file rules/DIR/ID.yaml with marked places to fill.")
    {
        _id = Name("ID", "Id of the new rule: small letters, digits, hyphens.");
        _topic = Value("--topic", "DIR", "Folder of rules/ in which the file goes, such as cautions. The text under 'because' is the page of the rule; 'rules show' prints it.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules new spare-the-grip-after-a-double-header --topic cautions",
        "hinge-selector rules new short-hamstrings-like-blocks --topic fit",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var id = line.GetValue(_id)!;
        if (!VocabularyReader.PlainId().IsMatch(id))
            throw new UsageException($"'{id}' is not an id.", "Write small letters, digits and hyphens, for example raise-the-bar-for-short-hips.");
        var files = Home.Files(line, around);
        var folder = Home.RulesFolder(line, around);
        var topic = TopicOf(line.GetValue(_topic), folder);
        if (RulePlaces.Of(files).TryGetValue(id, out var there))
            throw new UsageException($"There is a rule '{id}' already: {there.FileAndLine}.", "Choose another id, or change that rule.");
        var path = $"{topic}/{id}.yaml";
        Write(Path.Combine(folder, topic, $"{id}.yaml"), $"{files.Name}/{path}", RuleSkeleton.Of(id));
        around.Output.WriteLine($"{files.Name}/{path} is begun. Until its places are filled the rules are not complete:");
        around.Output.WriteLine();
        around.Output.Write(DiagnosticPrinter.Print(Unfilled(files.With(path, RuleSkeleton.Of(id)), path)));
        return ExitCode.Done;
    }

    private static string TopicOf(string? typed, string folder)
    {
        string[] topics = [.. Directory.GetDirectories(folder).Select(d => Path.GetFileName(d)).Except(_otherFolders).Order(StringComparer.Ordinal)];
        var topic = typed?.TrimEnd('/') ?? throw new UsageException("'rules new' needs a topic.", $"Add '--topic DIR'. Known: {string.Join(", ", topics)}.");
        return topics.Contains(topic)
            ? topic
            : throw new UsageException($"'{topic}' is not a folder for rules.", Slip.DidYouMeanOneOf(topic, topics) + (_otherFolders.Contains(topic) ? "" : " For a new topic make the folder first."));
    }

    private static void Write(string path, string shown, string text)
    {
        try
        {
            WholeFiles.Create(path, text);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UsageException(File.Exists(path) ? $"'{shown}' exists already; it is not overwritten." : $"'{shown}' cannot be written.", File.Exists(path) ? "Choose another id, or move the file." : "Check the permissions of the folder.");
        }
    }

    private static IEnumerable<Diagnostic> Unfilled(RuleFiles files, string path)
    {
        var bag = new DiagnosticBag();
        Rules.Reading.RuleBookReader.Read(files, bag);
        return bag.Sorted.Where(d => d.Span.Source?.Path == $"{files.Name}/{path}");
    }
}
