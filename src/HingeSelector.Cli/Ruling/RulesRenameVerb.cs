using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;
using HingeSelector.Words;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules rename</c>: a rule, finding, source or word under another name everywhere in rules/, all or nothing.</summary>
public sealed class RulesRenameVerb : Verb
{
    private readonly Argument<string> _old;
    private readonly Argument<string> _new;

    /// <summary>Declares the arguments.</summary>
    public RulesRenameVerb()
        : base("rename", "Rename a rule, finding, source or word everywhere in rules/, or nowhere.")
    {
        _old = Name("OLD", "Id of a rule, finding, source or word.");
        _new = Name("NEW", "Its new id: small letters, digits, hyphens; named by nothing yet.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules rename find-short-hamstrings hamstrings-are-short",
        "hinge-selector rules rename stiff-groin legs-open-little",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var (from, to) = (line.GetValue(_old)!, line.GetValue(_new)!);
        if (!VocabularyReader.PlainId().IsMatch(to))
            throw new UsageException($"'{to}' is not an id.", "Write small letters, digits and hyphens, for example short-hamstrings.");
        var files = Home.Files(line, around);
        var bag = new DiagnosticBag();
        var book = RuleBookReader.Read(files, bag);
        if (book is null || bag.HasErrors)
            throw new FaultyInputException(ExitCode.BadRules, bag.Sorted);
        Check(book, from, to);
        var renaming = Renaming.Of(files, book, from, to)
            ?? throw new UsageException($"'{from}' cannot be renamed by changing names alone: the rules would not read or not say the same. Nothing was written.", "It may be one of several that are declared together by a pattern; rename it by hand and run 'hinge-selector rules check'.");
        Write(Home.RulesFolder(line, around), files, renaming);
        Tell(around, renaming, from, to, files.Name);
        return ExitCode.Done;
    }

    private static void Check(RuleBook book, string from, string to)
    {
        if (Renaming.KindOf(book, from) is not { } kind)
        {
            if (book.Variants.Any(v => v.Id == from))
                throw new UsageException($"'{from}' is a variant, and a variant is its file.", "Only rules, findings, sources and words are renamed.");
            throw new UsageException($"There is no rule, finding, source or word '{from}'.", Slip.DidYouMean(from, Ids(book)) ?? "'hinge-selector rules list' shows the rules.");
        }
        if (Ids(book).Contains(to) || book.Variants.Any(v => v.Id == to))
            throw new UsageException($"'{to}' is taken: there is a {Noun(Renaming.KindOf(book, to))} of this name.", "Choose another name.");
        var isComputed = kind == IdKind.Word && book.Vocabulary[from].Span == SourceSpan.None;
        if (isComputed || (kind == IdKind.Word && ProgramWords.Ids.Contains(from)))
            throw new UsageException($"'{from}' is a word that the program itself {(isComputed ? "computes" : "needs")}, so it keeps its name.", "Change its label in rules/vocabulary.yaml where people should read another word.");
    }

    private static HashSet<string> Ids(RuleBook book)
        => [.. book.Rules.Select(r => r.Id), .. book.Findings.Select(f => f.Id), .. book.Sources.Keys, .. book.Vocabulary.Ids];

    private static void Write(string folder, RuleFiles files, Renaming renaming)
    {
        try
        {
            WholeFiles.Replace(folder, files.Texts, renaming.Texts);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UsageException("A file of the rules cannot be written; all are as before.", "Check the permissions of the rules folder.");
        }
    }

    private static void Tell(Surroundings around, Renaming renaming, string from, string to, string folder)
    {
        around.Output.WriteLine($"The {Noun(renaming.Kind)} '{from}' is now '{to}': {renaming.Places} places in {renaming.Texts.Count} files.");
        foreach (var path in renaming.Texts.Keys.Order(StringComparer.Ordinal))
            around.Output.WriteLine($"  {folder}/{path}");
        if (renaming.Kind == IdKind.Word)
            around.Output.WriteLine("Screens, rosters and pages outside the rules folder keep the old word until somebody changes them.");
        if (renaming.LeftInProse.Count == 0)
            return;
        around.Output.WriteLine("The old name still stands in comments or sentences, which stay as they are:");
        foreach (var place in renaming.LeftInProse)
            around.Output.WriteLine($"  {place}");
    }

    private static string Noun(IdKind? kind) => kind?.ToString().ToLowerInvariant() ?? "variant";
}
