using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stockwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class PlanDocuments : Migration
    {
        private const string Table = "BatchPlans";

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Document",
                table: "Plans",
                type: "TEXT",
                nullable: true);

            // A table beside the batches, not a column of them: their rows are never changed, and those of earlier versions get their plan later.
            migrationBuilder.CreateTable(
                name: Table,
                columns: table => new
                {
                    BatchId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BatchPlans", x => x.BatchId);
                    table.ForeignKey(
                        name: "FK_BatchPlans_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.Sql($"CREATE TRIGGER \"{Table}_NoUpdate\" BEFORE UPDATE ON \"{Table}\" BEGIN SELECT RAISE(ABORT, 'Entries are only added.'); END;");
            migrationBuilder.Sql($"CREATE TRIGGER \"{Table}_NoDelete\" BEFORE DELETE ON \"{Table}\" BEGIN SELECT RAISE(ABORT, 'Entries are only added.'); END;");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: Table);

            migrationBuilder.DropColumn(
                name: "Document",
                table: "Plans");
        }
    }
}
