using System.Security.Cryptography;
using System.Text;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules.Checking;
using HingeSelector.Words;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads a whole rules folder: all faults at once, or a complete rule book.</summary>
public static class RuleBookReader
{
    private const string VariantFolder = "variants/";
    private const string PhilosophyFolder = "philosophies/";
    private const string AcceptedFile = "accepted.yaml";
    private const int MostVariants = 64;

    /// <summary>Reads and compiles.</summary>
    /// <exception cref="FaultyFilesException">Any file is faulty; nothing is loaded in part.</exception>
    public static RuleBook Read(RuleFiles files)
    {
        var bag = new DiagnosticBag();
        var book = Read(files, bag);
        return book is null || bag.HasErrors ? throw new FaultyFilesException([.. bag.Sorted.Where(d => d.Severity == Severity.Error)]) : book;
    }

    /// <summary>Reads and compiles as far as possible, collecting faults.</summary>
    /// <returns>The book, or null when it cannot be used.</returns>
    public static RuleBook? Read(RuleFiles files, DiagnosticBag bag) => Read(files, YamlTrees.Read(files.Sources(), bag), bag);

    /// <summary>Compiles trees that have been read already, such as those of two versions put together.</summary>
    /// <param name="files">The files; only their names and their hash count.</param>
    /// <param name="trees">The trees by the names of the files.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The book, or null when it cannot be used.</returns>
    public static RuleBook? Read(RuleFiles files, YamlTrees trees, DiagnosticBag bag)
    {
        var variantIds = files.Texts.Keys.Where(k => k.StartsWith(VariantFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(k => Path.GetFileNameWithoutExtension(k)).ToList();
        if (variantIds.Count is 0 or > MostVariants)
            bag.Add(Problems.MissingFile($"{files.Name}/{VariantFolder}", $"one to {MostVariants} variants are needed"));
        var hash = Task.Run(() => HashOf(files));
        YamlNode? Root(string path) => RootOf(files, trees, path, bag);
        var vocabulary = VocabularyReader.Read(Root("vocabulary.yaml"), variantIds, bag);
        var (sources, carriers) = SourcesReader.Read(Root("sources.yaml"), bag);
        var criteria = CriteriaReader.Read(Root("criteria.yaml"), bag);
        var model = ModelReader.Read(Root("model.yaml"), sources, bag);
        var assumptions = AssumptionsReader.Read(Root("assumptions.yaml"), sources, bag);
        if (vocabulary is null || variantIds.Count is 0 or > MostVariants)
            return null;
        var (philosophies, roots) = ReadPhilosophies(files, trees, criteria, bag);
        var reader = new VariantReader(vocabulary, variantIds, sources, bag);
        var variants = variantIds.Select((id, i) => reader.Read(Root($"{VariantFolder}{id}.yaml"), i)).OfType<Variant>().ToList();
        if (variants.Count != variantIds.Count || model is null || assumptions is null)
            return null;
        CheckErrorSources(vocabulary, sources, bag);
        var topics = ReadTopics(files, trees, bag);
        var findings = ReadFindings(topics, bag);
        var ruleReader = new RuleReader(vocabulary, variants, sources, criteria, findings, bag);
        var rules = ReadRules(topics, ruleReader, bag);
        var ordered = findings.Values.OrderBy(f => f.Index).ToList();
        var levels = FindingGraph.Order(ordered, rules, bag);
        if (!bag.HasErrors)
            PaysTwiceCheck.Run(vocabulary, rules, variants, criteria, bag);
        var book = new RuleBook
        {
            Vocabulary = vocabulary,
            Variants = variants,
            Criteria = criteria,
            Sources = sources,
            Philosophies = philosophies,
            Findings = ordered,
            Rules = rules,
            FindingOrder = levels,
            RulesOfFinding = FindingGraph.RulesOf(ordered, rules),
            Model = model,
            Assumptions = assumptions,
            Carriers = carriers,
            Accepted = trees.Has(AcceptedFile) ? AcceptanceReader.OfFile(trees[AcceptedFile], bag) : [],
            Hash = hash.GetAwaiter().GetResult(),
        };
        // What is laid over a faulty base would only repeat its faults.
        return bag.HasErrors ? book : book with { Overlays = ReadOverlays(book, roots, ruleReader, bag) };
    }

    private static Dictionary<string, Overlay> ReadOverlays(RuleBook book, Dictionary<string, YamlNode> roots, RuleReader reader, DiagnosticBag bag)
    {
        var overlays = new Dictionary<string, Overlay>(StringComparer.Ordinal);
        var changing = book.Philosophies.Values.Where(p => p.ChangesRules).OrderBy(p => p.Id, StringComparer.Ordinal).ToList();
        if (changing.Count == 0)
            return overlays;
        var overlayReader = new OverlayReader(book, reader, SealedRules.Of(book.Vocabulary, book.Rules), bag);
        foreach (var philosophy in changing)
        {
            if (overlayReader.Read(roots[philosophy.Id], philosophy) is { } overlay)
                overlays.Add(philosophy.Id, overlay);
        }
        return overlays;
    }

    private static YamlNode? RootOf(RuleFiles files, YamlTrees trees, string path, DiagnosticBag bag)
    {
        if (trees.Has(path))
            return trees[path];
        bag.Add(Problems.MissingFile($"{files.Name}/{path}", "the rules are not complete without it"));
        return null;
    }

    private static (Dictionary<string, Philosophy> Philosophies, Dictionary<string, YamlNode> Roots) ReadPhilosophies(RuleFiles files, YamlTrees trees, IReadOnlyList<Criterion> criteria, DiagnosticBag bag)
    {
        var philosophies = new Dictionary<string, Philosophy>(StringComparer.Ordinal);
        var roots = new Dictionary<string, YamlNode>(StringComparer.Ordinal);
        foreach (var path in files.Texts.Keys.Where(k => k.StartsWith(PhilosophyFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            if (PhilosophyReader.Read(trees[path], criteria, bag) is not { } philosophy)
                continue;
            if (philosophies.TryAdd(philosophy.Id, philosophy))
                roots.Add(philosophy.Id, trees[path]!);
            else
                bag.Add(Problems.DuplicateId(philosophy.Span, "philosophy", philosophy.Id, philosophies[philosophy.Id].Span));
        }
        if (philosophies.Count == 0)
            bag.Add(Problems.MissingFile($"{files.Name}/{PhilosophyFolder}", "at least one philosophy is needed"));
        return (philosophies, roots);
    }

    private static void CheckErrorSources(Vocabulary vocabulary, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        foreach (var word in vocabulary.Words.Where(w => w.ErrorSource is not null && !sources.ContainsKey(w.ErrorSource)))
            bag.Add(Problems.UnknownSource(word.Span, word.ErrorSource!, [.. sources.Keys]));
        foreach (var word in vocabulary.Words.Where(w => (w.Error ?? w.ErrorShare) is not null && w.ErrorSource is null))
            bag.Add(Problems.MissingKey(word.Span, "error source", $"the fact '{word.Id}'"));
        foreach (var word in vocabulary.Words.Where(w => w.Typical is not null))
            CheckTypical(word, word.Typical!, sources, bag);
    }

    private static void CheckTypical(Word word, TypicalSpread typical, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        foreach (var source in typical.Sources.Where(s => !sources.ContainsKey(s)))
            bag.Add(Problems.UnknownSource(word.Span, source, [.. sources.Keys]));
        var grade = Parse.Grade(new YamlScalar(typical.Grade, false, word.Span), bag);
        if (grade is not (null or Grade.Practice) && typical.Sources.Count == 0)
            bag.Add(Problems.GradeWithoutSource(word.Span, typical.Grade));
    }

    private static List<(string Topic, MapReader Map)> ReadTopics(RuleFiles files, YamlTrees trees, DiagnosticBag bag)
    {
        var topics = new List<(string, MapReader)>();
        foreach (var path in files.Texts.Keys.Order(StringComparer.Ordinal))
        {
            var slash = path.IndexOf('/', StringComparison.Ordinal);
            if (slash < 0 || path.StartsWith(VariantFolder, StringComparison.Ordinal) || path.StartsWith(PhilosophyFolder, StringComparison.Ordinal))
                continue;
            if (MapReader.Open(trees[path], "a rule file", bag) is { } map)
                topics.Add((path[..slash], map));
        }
        return topics;
    }

    private static Dictionary<string, Finding> ReadFindings(List<(string Topic, MapReader Map)> topics, DiagnosticBag bag)
    {
        var findings = new Dictionary<string, Finding>(StringComparer.Ordinal);
        foreach (var node in topics.SelectMany(t => t.Map.List("findings")))
        {
            var map = MapReader.Open(node, "a finding", bag);
            if (map?.Required("finding") is not { } id)
                continue;
            if (!VocabularyReader.PlainId().IsMatch(id.Value))
                bag.Add(Problems.BadId(id.Span, id.Value));
            var finding = new Finding(findings.Count, id.Value, map.Required("label")?.Value ?? "", map.Required("means")?.Value ?? "", id.Span);
            map.Finish();
            if (!findings.TryAdd(id.Value, finding))
                bag.Add(Problems.DuplicateId(id.Span, "finding", id.Value, findings[id.Value].Span));
        }
        return findings;
    }

    private static List<Rule> ReadRules(List<(string Topic, MapReader Map)> topics, RuleReader reader, DiagnosticBag bag)
    {
        var rules = new Dictionary<string, Rule>(StringComparer.Ordinal);
        foreach (var (topic, map) in topics)
        {
            var mayBeUnfilled = UnfilledPlaces.MayStandIn(map.Span.Source);
            foreach (var node in map.List("rules"))
            {
                if (mayBeUnfilled && UnfilledPlaces.Report(node, bag))
                    continue;
                if (reader.Read(node, topic) is { } rule && !rules.TryAdd(rule.Id, rule))
                    bag.Add(Problems.DuplicateId(rule.Span, "rule", rule.Id, rules[rule.Id].Span));
            }
            map.Finish();
        }
        return [.. rules.Values.OrderBy(r => r.Id, StringComparer.Ordinal).Select((r, i) => r with { Index = i })];
    }

    private static string HashOf(RuleFiles files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var path in files.Texts.Keys.Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(path));
            hash.AppendData([0]);
            hash.AppendData(Encoding.UTF8.GetBytes(files.Texts[path]));
            hash.AppendData([0]);
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
