using HingeSelector.Knowledge;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>The rules of a book as questions to a solver: which screens there can be, and what each condition says of them.</summary>
/// <remarks>
/// Words that are computed from others stand on their own here, apart from a few links. So "no screen can do this" is always true,
/// and a screen that is found may give computed words directly, as an example in a rule file does.
/// </remarks>
internal sealed class RuleSpace
{
    private readonly Vocabulary _vocabulary;
    private readonly IReadOnlyList<Variant> _variants;
    private readonly Leaves _leaves;
    private readonly ILookup<int, Rule> _concluding;
    private readonly FamilyBuilder _builder;
    private readonly List<Family> _families = [];
    private readonly List<SetWord> _sets = [];
    private readonly Dictionary<string, Family> _byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SetWord> _setsByWord = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Form> _forms = new(StringComparer.Ordinal);
    private readonly Dictionary<int, Form> _findings = [];
    private readonly Dictionary<int, Form> _rules = [];
    private readonly Dictionary<int, List<Form>> _links = [];

    /// <summary>Prepares the space; families are worked out when they are first asked for.</summary>
    public RuleSpace(Vocabulary vocabulary, IReadOnlyList<Variant> variants, IReadOnlyList<Rule> rules)
    {
        _vocabulary = vocabulary;
        _variants = variants;
        _leaves = new Leaves(rules);
        _concluding = rules.SelectMany(r => r.Conclusions.OfType<FindingConclusion>().Select(c => (c.Finding, Rule: r))).ToLookup(p => p.Finding, p => p.Rule);
        _builder = new FamilyBuilder(vocabulary);
        Variants = _builder.OfVariants(0, variants, [.. _leaves.Words.Where(IsOfVariant).SelectMany(_leaves.About)]);
        _families.Add(Variants);
    }

    /// <summary>The catalogue: one state a variant.</summary>
    public Family Variants { get; }

    /// <summary>The families that have been worked out so far.</summary>
    public IReadOnlyList<Family> Families => _families;

    /// <summary>Sets that have been taken apart so far.</summary>
    public IReadOnlyList<SetWord> Sets => _sets;

    /// <summary>What always holds between a family and others.</summary>
    public IReadOnlyList<Form> LinksOf(Family family) => _links.TryGetValue(family.Index, out var links) ? links : [];

    /// <summary>All conditions of a rule, those on words of the variant included.</summary>
    public Form Of(Rule rule)
    {
        if (_rules.TryGetValue(rule.Index, out var form))
            return form;
        return _rules[rule.Index] = new AllForm([.. rule.Conditions.Select(Of)]);
    }

    /// <summary>A condition.</summary>
    public Form Of(Condition condition)
    {
        if (_forms.TryGetValue(condition.Key, out var form))
            return form;
        form = condition switch
        {
            NotCondition not => new NotForm(Of(not.Part)),
            AllCondition all => new AllForm([.. all.Parts.Select(Of)]),
            AnyCondition any => new AnyForm([.. any.Parts.Select(Of)]),
            FindingCondition finding => finding.Present ? OfFinding(finding.Finding) : new NotForm(OfFinding(finding.Finding)),
            ValuesCondition values when values.Reading.Word.Kind == WordKind.Set && !IsOfVariant(values.Reading.Word) => OfSet(values),
            _ => FamilyOf(condition.Reads.First()).Of(condition),
        };
        return _forms[condition.Key] = form;
    }

    /// <summary>A finding: at least one of its rules holds.</summary>
    public Form OfFinding(int finding)
    {
        if (_findings.TryGetValue(finding, out var form))
            return form;
        return _findings[finding] = new AnyForm([.. _concluding[finding].Select(Of)]);
    }

    /// <summary>The candidate is this variant.</summary>
    public Form IsVariant(int variant) => Variants.Leaf(s => Variants[s].Tag == variant ? Truth.True : Truth.False);

    /// <summary>A set that holds at least one item.</summary>
    public Form HasSome(Word set) => SetOf(Vocabulary.Reading(set, null)!).Has(ulong.MaxValue, true);

    private Form OfSet(ValuesCondition values)
    {
        // Sides of what is in a set are read from one answer; other readings of a set are sets of their own.
        if (values.Reading is { Name: { Length: > 0 } side, Word.ValueSides: not null })
            return SetOf(Vocabulary.Reading(values.Reading.Word, null)!).HasOn(side, values.Mask, values.Wanted);
        return SetOf(values.Reading).Has(values.Mask, values.Wanted);
    }

    private static bool IsOfVariant(Word word) => word.About == WordAbout.Variant || word.Id == "variant";

    private Family FamilyOf(WordReading reading)
    {
        if (IsOfVariant(reading.Word))
            return Variants;
        var floored = reading.Word.NotBelow is not null || _leaves.Words.Any(w => w.NotBelow == reading.Word.Id);
        return reading.Word.Sided || floored ? FamilyOfSides(reading.Word) : FamilyOfReading(reading);
    }

    private Family FamilyOfReading(WordReading reading)
    {
        var name = reading.ToString();
        if (_byName.TryGetValue(name, out var family))
            return family;
        family = Add(name, _builder.OfReading(_families.Count, reading, [.. _leaves.About(reading.Word).Where(c => c.Reads.First().Slot == reading.Slot)]));
        if (reading.Word is { About: WordAbout.Candidate, Readings.Count: > 0 })
            LinkToVariants(family);
        return family;
    }

    // The posture model leaves some variants out; nothing that it computes applies to them.
    private void LinkToVariants(Family family)
    {
        var notModelled = Variants.Leaf(s => _variants[Variants[s].Tag].Posture is null ? Truth.False : Truth.True);
        var notApplicable = family.Leaf(s => family[s].Given is [{ Value.State: FactState.NotApplicable }] || family[s].Given is [{ Reading.Word.Id: "posture", Value.Bits: 1UL << 3 }] ? Truth.True : Truth.False);
        Link(family, new AnyForm([notModelled, notApplicable]));
    }

    private Family FamilyOfSides(Word word)
    {
        var words = Chain(word);
        if (_byName.TryGetValue(words[0].Id, out var family))
            return family;
        var leaves = words.SelectMany(_leaves.About).ToList();
        var throwing = leaves.Exists(c => c.Reads.First().Name is { } name && (name == Sides.Names[Sides.Throwing] || name == Sides.Names[Sides.Other]));
        family = Add(words[0].Id, _builder.OfSides(_families.Count, words, leaves, throwing));
        if (throwing)
            LinkToThrowingSide(family);
        return family;
    }

    /// <summary>A word with all that cannot lie below it or below which it cannot lie, the lowest first.</summary>
    private List<Word> Chain(Word word)
    {
        while (word.NotBelow is not null && _vocabulary.Find(word.NotBelow) is { } lower)
            word = lower;
        var chain = new List<Word> { word };
        for (var i = 0; i < chain.Count; i++)
            chain.AddRange(_vocabulary.Words.Where(w => w.NotBelow == chain[i].Id));
        return chain;
    }

    private void LinkToThrowingSide(Family family)
    {
        var side = _vocabulary.Find("throwing-side") is { } word ? FamilyOfReading(Vocabulary.Reading(word, null)!) : null;
        foreach (var tag in new[] { 0, 1, 2, 3 })
        {
            var here = family.Leaf(s => family[s].Tag == tag ? Truth.True : Truth.False);
            var there = side?.Leaf(s => TagOf(side[s]) == tag ? Truth.False : Truth.True);
            if (there is not null)
                Link(family, new AnyForm([here, there]));
            else if (tag == 0)
                Link(family, here);
        }
    }

    // The marks of the sides' families: 0 not known, 1 left, 2 right, 3 not applicable.
    private static int TagOf(FamilyState state) => state.Given switch
    {
        [] => 0,
        [{ Value.IsKnown: true }] => state.Tag + 1,
        _ => 3,
    };

    private SetWord SetOf(WordReading reading)
    {
        var name = reading.ToString();
        if (_setsByWord.TryGetValue(name, out var set))
            return set;
        var word = reading.Word;
        var itself = Add(name, FamilyBuilder.OfSetItself(_families.Count, reading));
        var items = Enumerable.Range(0, word.Values.Count).Select(i => Add($"{name} {word.Values[i]}", FamilyBuilder.OfItem(_families.Count, word, i))).ToList();
        // One yes or no of its own, so that two conditions that hang on it meet there and not item by item.
        var same = word.ValueSides is null ? null : Add($"{name} same on both sides", FamilyBuilder.OfItem(_families.Count, word, 0));
        set = new SetWord(reading, itself, items, word.ValueSides is null ? [] : ThrowingSide(), same);
        foreach (var meaning in same is null ? [] : set.MeaningOfSame())
            Link(same!, meaning);
        _sets.Add(set);
        _setsByWord[name] = set;
        LinkToHistory(set);
        return set;
    }

    /// <summary>The throwing side: not known, left, right, not applicable.</summary>
    private Form[] ThrowingSide()
    {
        if (_vocabulary.Find("throwing-side") is not { } word)
            return [Form.Holds, new AnyForm([]), new AnyForm([]), new AnyForm([])];
        var side = FamilyOfReading(Vocabulary.Reading(word, null)!);
        return [.. Enumerable.Range(0, 4).Select(tag => side.Leaf(s => TagOf(side[s]) == tag ? Truth.True : Truth.False))];
    }

    // What letters leave open, and what they are about, is on file.
    private void LinkToHistory(SetWord set)
    {
        if (set.Reading.Word.Id is not ("not-cleared" or "letter") || _vocabulary.Find(ClearanceTerms.About) is not { } word)
            return;
        var history = SetOf(Vocabulary.Reading(word, null)!);
        Link(set.Itself, new AnyForm([new NotForm(set.Known), history.Known]));
        for (var i = 0; i < set.Items.Count; i++)
        {
            var item = set.Items[i];
            Link(item, new AnyForm([item.Leaf(s => s == 0 ? Truth.True : Truth.False), history.Has(word.MaskOf(i), true)]));
        }
    }

    private void Link(Family family, Form form)
    {
        if (!_links.TryGetValue(family.Index, out var links))
            _links[family.Index] = links = [];
        links.Add(form);
    }

    private Family Add(string name, Family family)
    {
        _families.Add(family);
        _byName[name] = family;
        return family;
    }
}
