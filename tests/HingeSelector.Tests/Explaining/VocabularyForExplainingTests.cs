using System.Globalization;
using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Explaining;

public sealed class VocabularyForExplainingTests
{
    [Fact]
    public void Minutes_agree_with_the_protocol_pages()
    {
        var told = 0;
        foreach (var page in Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "content/protocols"), "*.md"))
        {
            var text = File.ReadAllText(page);
            var minutes = double.Parse(Regex.Match(text, @"^minutes: (\S+)$", RegexOptions.Multiline).Groups[1].Value, CultureInfo.InvariantCulture);
            var words = Asked.Book.Vocabulary.Words.Where(w => w.Protocol == Path.GetFileNameWithoutExtension(page) && w.Minutes is not null).ToList();
            words.ShouldAllBe(w => w.Minutes <= minutes, page);
            told += words.Count;
        }
        told.ShouldBeGreaterThan(30);
    }

    [Fact]
    public void Everything_that_may_be_proposed_says_how_long_it_takes()
        => Asked.Book.Vocabulary.Words.Where(w => w.IsMeasured && HingeSelector.Explaining.Changeable.WhyNot(Asked.Book.Vocabulary, w) is null).ShouldAllBe(w => w.Minutes != null);

    [Fact]
    public void A_spread_that_names_no_source_is_graded_practice_and_every_spread_lies_inside_the_range()
    {
        var words = Asked.Book.Vocabulary.Words.Where(w => w.Typical is not null).ToList();
        words.Count.ShouldBeGreaterThan(10);
        words.Where(w => w.Typical!.Sources.Count == 0).ShouldAllBe(w => w.Typical!.Grade == "practice" && w.Typical.Note == "common practice, no source");
        foreach (var word in words)
        {
            foreach (var (mean, deviation) in new[] { word.Typical!.Female, word.Typical.Male })
            {
                (mean - (2 * deviation)).ShouldBeGreaterThanOrEqualTo(word.Range!.Value.Low, word.Id);
                (mean + (2 * deviation)).ShouldBeLessThanOrEqualTo(word.Range.Value.High, word.Id);
            }
        }
    }

    [Theory]
    [InlineData("76 deg +- 11 deg", "76 deg to 87 deg", "HS2003")]
    [InlineData("76 deg +- 11 deg", "76 kg +- 11 kg", "HS2003")]
    [InlineData("sources: [youdas-2005, gajdosik-1993]", "sources: [youdas-2006]", "HS2007")]
    [InlineData("sources: [dodds-2014]", "sources: []", "HS3007")]
    [InlineData("minutes: 4, typical", "minutes: soon, typical", "HS2003")]
    public void A_faulty_spread_is_an_error_with_a_place(string was, string becomes, string id)
    {
        var files = RepositoryFiles.Rules;
        var text = files.Texts["vocabulary.yaml"];
        text.ShouldContain(was);
        var bag = new DiagnosticBag();
        RuleBookReader.Read(files.With("vocabulary.yaml", text.Replace(was, becomes, StringComparison.Ordinal)), bag);
        bag.Sorted.ShouldContain(d => d.Id == id && d.Span.Source != null);
    }
}
