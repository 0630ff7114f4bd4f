using CsCheck;
using Stockwright.Logbook;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Stockwright.Tests.Logbook;

/// <summary>What is written of a fact reads back as the same fact; what is not a fact is refused and never guessed.</summary>
public sealed class FactDocumentTests
{
    [Fact]
    public void Every_fact_reads_back_to_the_last_bit() => Facts.Any.Sample(
        fact => fact.Equals(FactDocument.Read(FactDocument.Word(fact), FactDocument.Write(fact))),
        iter: 2000);

    [Fact]
    public void There_is_a_word_for_every_kind_of_fact_and_a_test_of_each()
    {
        Type[] kinds = [.. typeof(LogFact).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(LogFact)))];
        Assert.Equal(kinds.Length, FactDocument.Words.Count);
        Assert.Equal(FactDocument.Words, Facts.Each.Select(gen => FactDocument.Word(gen.Generate(new PCG(1), null, out _))), StringComparer.Ordinal);
    }

    /// <summary>A limit printed in °F is judged in °F: FDA Food Code 3-501.14 asks for 135 to 70 °F, and 70 must not come back as 70.00000000000006.</summary>
    [Theory]
    [InlineData(70)]
    [InlineData(135)]
    [InlineData(41)]
    [InlineData(68.1)]
    public void Degrees_fahrenheit_stay_as_they_were_read(double degrees)
    {
        LogFact.TemperatureRead read = new(Temperature.FromDegreesFahrenheit(degrees), ReadingPlace.Cooling);
        LogFact.TemperatureRead back = Assert.IsType<LogFact.TemperatureRead>(FactDocument.Read("temperature", FactDocument.Write(read)));
        Assert.Equal(TemperatureUnit.DegreeFahrenheit, back.Temperature.Unit);
        Assert.Equal(degrees, (double)back.Temperature.Value);
    }

    [Theory]
    [InlineData("sang", "{}")]
    [InlineData("", "{}")]
    [InlineData("Level", """{"belowRimMetres":0.1}""")]
    [InlineData("level", "")]
    [InlineData("level", "null")]
    [InlineData("level", "[]")]
    [InlineData("level", "{}")]
    [InlineData("level", """{"belowRimMetres":null}""")]
    [InlineData("level", """{"belowRimMetres":"0.1"}""")]
    [InlineData("level", """{"belowRimMetres":1e999}""")]
    [InlineData("level", """{"belowRimMetres":0.1,"belowRimMetres":0.2}""")]
    [InlineData("level", """{"belowRimMetres":0.1,"litres":2}""")]
    [InlineData("skimmed", """{"why":"x"}""")]
    [InlineData("skimmed", """{"closesRecord":false}""")]
    [InlineData("skimmed", """{"$type":"skimmed"}""")]
    [InlineData("temperature", """{"place":"Pot"}""")]
    [InlineData("temperature", """{"degreesCelsius":20,"place":"7"}""")]
    [InlineData("temperature", """{"degreesCelsius":20,"degreesFahrenheit":68,"place":"Pot"}""")]
    [InlineData("temperature", """{"degreesCelsius":20,"place":"Pot,Cooling"}""")]
    [InlineData("lid", """{"lid":"Ajar"}""")]
    [InlineData("lid", """{"lid":"Ajar","openFraction":0.7}""")]
    [InlineData("lid", """{"lid":"On","openFraction":0.3}""")]
    [InlineData("heat-lost", """{"until":"yesterday"}""")]
    [InlineData("heat-lost", """{"until":1}""")]
    [InlineData("closed", """{"attendedSeconds":-1}""")]
    [InlineData("closed", """{"attendedSeconds":1e300}""")]
    [InlineData("set-felt", """{"body":"crunchy"}""")]
    [InlineData("note", """{"text":"\ud800"}""")]
    public void What_is_no_fact_is_refused(string word, string json) =>
        Assert.Contains(word, Assert.Throws<FactFormatException>(() => FactDocument.Read(word, json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Damaged_text_is_a_fact_or_is_refused_and_nothing_else_happens() => Gen.Select(
        Facts.Any, Gen.Int[0, 200], Gen.OneOf(Gen.Char.AlphaNumeric, Gen.OneOfConst('{', '}', '"', ':', ',', '-', '.', '\\', '\ud800', '\0')), Gen.OneOfConst([.. FactDocument.Words])).Sample(
        (fact, place, letter, word) =>
        {
            string json = FactDocument.Write(fact);
            int at = place % json.Length;
            try
            {
                _ = FactDocument.Read(word, json[..at] + letter + json[(at + 1)..]);
            }
            catch (FactFormatException)
            {
            }
        },
        iter: 3000);
}
