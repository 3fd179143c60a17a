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
    public static RuleBook? Read(RuleFiles files, DiagnosticBag bag)
    {
        var variantIds = files.Texts.Keys.Where(k => k.StartsWith(VariantFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(k => Path.GetFileNameWithoutExtension(k)).ToList();
        if (variantIds.Count is 0 or > MostVariants)
            bag.Add(Problems.MissingFile($"{files.Name}/{VariantFolder}", $"one to {MostVariants} variants are needed"));
        var hash = Task.Run(() => HashOf(files));
        var trees = YamlTrees.Read(files.Sources(), bag);
        YamlNode? Root(string path) => RootOf(files, trees, path, bag);
        var vocabulary = VocabularyReader.Read(Root("vocabulary.yaml"), variantIds, bag);
        var (sources, carriers) = SourcesReader.Read(Root("sources.yaml"), bag);
        var criteria = CriteriaReader.Read(Root("criteria.yaml"), bag);
        var model = ModelReader.Read(Root("model.yaml"), sources, bag);
        var assumptions = AssumptionsReader.Read(Root("assumptions.yaml"), sources, bag);
        if (vocabulary is null || variantIds.Count is 0 or > MostVariants)
            return null;
        var philosophies = ReadPhilosophies(files, trees, criteria, bag);
        var reader = new VariantReader(vocabulary, variantIds, sources, bag);
        var variants = variantIds.Select((id, i) => reader.Read(Root($"{VariantFolder}{id}.yaml"), i)).OfType<Variant>().ToList();
        if (variants.Count != variantIds.Count || model is null || assumptions is null)
            return null;
        CheckErrorSources(vocabulary, sources, bag);
        var topics = ReadTopics(files, trees, bag);
        var findings = ReadFindings(topics, bag);
        var rules = ReadRules(topics, new RuleReader(vocabulary, variants, sources, criteria, findings, bag), bag);
        var ordered = findings.Values.OrderBy(f => f.Index).ToList();
        var levels = FindingGraph.Order(ordered, rules, bag);
        if (!bag.HasErrors)
            PaysTwiceCheck.Run(vocabulary, rules, variants, criteria, bag);
        return new RuleBook
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
    }

    private static YamlNode? RootOf(RuleFiles files, YamlTrees trees, string path, DiagnosticBag bag)
    {
        if (trees.Has(path))
            return trees[path];
        bag.Add(Problems.MissingFile($"{files.Name}/{path}", "the rules are not complete without it"));
        return null;
    }

    private static Dictionary<string, Philosophy> ReadPhilosophies(RuleFiles files, YamlTrees trees, IReadOnlyList<Criterion> criteria, DiagnosticBag bag)
    {
        var philosophies = new Dictionary<string, Philosophy>(StringComparer.Ordinal);
        foreach (var path in files.Texts.Keys.Where(k => k.StartsWith(PhilosophyFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            if (PhilosophyReader.Read(trees[path], criteria, bag) is { } philosophy && !philosophies.TryAdd(philosophy.Id, philosophy))
                bag.Add(Problems.DuplicateId(philosophy.Span, "philosophy", philosophy.Id, philosophies[philosophy.Id].Span));
        }
        if (philosophies.Count == 0)
            bag.Add(Problems.MissingFile($"{files.Name}/{PhilosophyFolder}", "at least one philosophy is needed"));
        return philosophies;
    }

    private static void CheckErrorSources(Vocabulary vocabulary, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        foreach (var word in vocabulary.Words.Where(w => w.ErrorSource is not null && !sources.ContainsKey(w.ErrorSource)))
            bag.Add(Problems.UnknownSource(word.Span, word.ErrorSource!, [.. sources.Keys]));
        foreach (var word in vocabulary.Words.Where(w => (w.Error ?? w.ErrorShare) is not null && w.ErrorSource is null))
            bag.Add(Problems.MissingKey(word.Span, "error source", $"the fact '{word.Id}'"));
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
            foreach (var node in map.List("rules"))
            {
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
