using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Stockwright.Web.Shell;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>A page is never written before all it loads is there, even when what stands round it is written again meanwhile.</summary>
public sealed class LoadedComponentTests
{
    [Fact]
    public async Task Written_round_again_while_it_loads_it_waits_for_what_it_loads() =>
        Assert.Equal("loaded", await WriteAsync(source => source.SetResult("loaded")));

    [Fact]
    public async Task Written_round_again_and_the_load_broken_off_it_writes_nothing() =>
        Assert.Equal("", await WriteAsync(source => source.SetCanceled(new CancellationToken(canceled: true))));

    [Fact]
    public async Task Written_round_again_after_the_load_was_broken_off_it_writes_nothing()
    {
        TaskCompletionSource<string> source = new();
        source.SetCanceled(new CancellationToken(canceled: true));
        Assert.Equal("", await WriteAsync(_ => { }, source));
    }

    private static async Task<string> WriteAsync(Action<TaskCompletionSource<string>> end, TaskCompletionSource<string>? from = null)
    {
        TaskCompletionSource<string> source = from ?? new();
        Surround? surround = null;
        await using ServiceProvider services = new ServiceCollection().BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            Dictionary<string, object?> parameters = new(StringComparer.Ordinal) { [nameof(Surround.Source)] = source.Task, [nameof(Surround.Made)] = (Action<Surround>)(made => surround = made) };
            Microsoft.AspNetCore.Components.Web.HtmlRendering.HtmlRootComponent page = renderer.BeginRenderingComponent<Surround>(ParameterView.FromDictionary(parameters));
            surround!.WriteAgain();
            end(source);
            try
            {
                await page.QuiescenceTask;
            }
            catch (OperationCanceledException)
            {
                // As a reader who hung up leaves it.
            }

            return page.ToHtmlString();
        });
    }

    /// <summary>What stands round a page, a layout for instance: writes it again when asked to, with parameters that count as changed.</summary>
    private sealed class Surround : ComponentBase
    {
        [Parameter]
        public Task<string> Source { get; set; } = null!;

        [Parameter]
        public Action<Surround> Made { get; set; } = null!;

        public void WriteAgain() => StateHasChanged();

        protected override void OnInitialized() => Made(this);

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            builder.OpenComponent<Loading>(0);
            builder.AddComponentParameter(1, nameof(Loading.Source), Source);
            builder.CloseComponent();
        }
    }

    private sealed class Loading : LoadedComponent
    {
        private string text = null!;

        [Parameter]
        public Task<string> Source { get; set; } = null!;

        protected override async Task OnInitializedAsync() => text = await Source;

        // Throws when there is nothing to write.
        protected override void BuildRenderTree(RenderTreeBuilder builder) => builder.AddContent(0, text.Trim());
    }
}
